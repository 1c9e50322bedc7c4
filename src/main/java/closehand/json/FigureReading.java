package closehand.json;

import closehand.bank.Problem;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;

/** Reads an object that is mostly numbers: every one must be there and in its range. */
final class FigureReading {
  private final ObjectReading in;

  FigureReading(ObjectReading in) {
    this.in = in;
  }

  ObjectReading in() {
    return in;
  }

  /** A number that must be there; the lower bound after a problem. */
  double number(String name, double minimum, double maximum) {
    in.required(name);
    return in.optionalNumber(name, minimum, maximum).orElse(minimum);
  }

  /** A whole number that must be there; the lower bound after a problem. */
  int whole(String name, int minimum, int maximum) {
    return in.whole(name, minimum, maximum);
  }

  /** So many numbers in a list. */
  List<Double> numbers(String name, int count, double minimum, double maximum) {
    List<Double> numbers = numbers(name, minimum, maximum);
    if (numbers.size() != count) {
      in.problems()
          .add(
              Problem.error(
                  in.where(name),
                  "out-of-range",
                  "\"" + name + "\" needs " + count + " numbers.",
                  ""));
      List<Double> filled = new ArrayList<>(numbers);
      while (filled.size() < count) {
        filled.add(minimum);
      }
      return filled.subList(0, count);
    }
    return numbers;
  }

  /** Any number of numbers in a list. */
  List<Double> numbers(String name, double minimum, double maximum) {
    List<Double> numbers = new ArrayList<>();
    for (JsonValue value : in.list(name)) {
      if (value instanceof JsonValue.Num number
          && number.value() >= minimum
          && number.value() <= maximum) {
        numbers.add(number.value());
      } else {
        ObjectReading.wrongType(
            value, "a number from " + minimum + " to " + maximum, in.problems());
      }
    }
    return numbers;
  }

  /** So many whole numbers in a list. */
  List<Integer> wholes(String name, int count, int minimum, int maximum) {
    return numbers(name, count, minimum, maximum).stream().map(d -> (int) Math.round(d)).toList();
  }

  /** The members of an object, each read the same way. */
  <T> Map<String, T> members(String name, Function<JsonValue, T> read) {
    Map<String, T> found = new LinkedHashMap<>();
    in.required(name)
        .ifPresent(
            value -> {
              if (value instanceof JsonValue.Obj object) {
                object.members().forEach(m -> found.put(m.name(), read.apply(m.value())));
              } else {
                ObjectReading.wrongType(value, "an object", in.problems());
              }
            });
    return found;
  }

  /** A part that must be there. */
  <T> T part(String name, Function<FigureReading, T> read) {
    JsonValue value = in.required(name).orElse(new JsonValue.Obj(List.of(), in.where()));
    JsonValue.Obj object =
        value instanceof JsonValue.Obj found ? found : new JsonValue.Obj(List.of(), value.where());
    if (!(value instanceof JsonValue.Obj)) {
      ObjectReading.wrongType(value, "an object", in.problems());
    }
    FigureReading part = new FigureReading(new ObjectReading(object, in.problems()));
    T read1 = read.apply(part);
    part.in.finish();
    return read1;
  }

  /** Every object of a list that must be there. */
  <T> List<T> each(String name, Function<FigureReading, T> read) {
    List<T> all = new ArrayList<>();
    for (JsonValue value : in.list(name)) {
      ObjectReading.of(value, in.problems())
          .ifPresent(
              one -> {
                all.add(read.apply(new FigureReading(one)));
                one.finish();
              });
    }
    return all;
  }
}
