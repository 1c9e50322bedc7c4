package closehand.json;

import closehand.bank.Hint;
import closehand.bank.Problem;
import closehand.bank.Where;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Reads the members of one object by name, notes what is missing or of the wrong kind, and at the
 * end which names nobody asked for.
 */
final class ObjectReading {
  private final JsonValue.Obj object;
  private final List<Problem> problems;
  private final List<String> known = new ArrayList<>();
  private final List<Missing> missing = new ArrayList<>();

  private record Missing(List<String> names, Problem problem) {}

  ObjectReading(JsonValue.Obj object, List<Problem> problems) {
    this.object = object;
    this.problems = problems;
  }

  /** Starts on a value that should be an object; a problem and empty if it is none. */
  static Optional<ObjectReading> of(JsonValue value, List<Problem> problems) {
    if (value instanceof JsonValue.Obj object) {
      return Optional.of(new ObjectReading(object, problems));
    }
    wrongType(value, "an object", problems);
    return Optional.empty();
  }

  Where where() {
    return object.where();
  }

  /** Where the member stands; the object if it is not there. */
  Where where(String name) {
    return object.member(name).map(JsonValue::where).orElse(object.where());
  }

  /** The names of all members, in order. */
  List<String> names() {
    return object.members().stream().map(JsonValue.Member::name).toList();
  }

  List<Problem> problems() {
    return problems;
  }

  /** Any member, without saying anything if it is missing. */
  Optional<JsonValue> optional(String name) {
    known.add(name);
    return object.member(name);
  }

  /** A member that must be there. */
  Optional<JsonValue> required(String name) {
    Optional<JsonValue> value = optional(name);
    if (value.isEmpty()) {
      missing(List.of(name), "\"" + name + "\" is missing here.", "Add it.");
    }
    return value;
  }

  /**
   * Notes that a member with one of these names is missing. {@link #finish} takes this back where
   * it tells about a member of a similar name instead.
   */
  void missing(List<String> names, String what, String mend) {
    Missing one = new Missing(names, Problem.error(object.where(), "missing", what, mend));
    missing.add(one);
    problems.add(one.problem());
  }

  /** Text that must be there and say something; empty text after a problem. */
  String text(String name) {
    Optional<JsonValue> value = required(name);
    if (value.isEmpty()) {
      return "";
    }
    if (value.get() instanceof JsonValue.Str text) {
      if (text.value().isBlank()) {
        problems.add(
            Problem.error(
                text.where(), "missing", "\"" + name + "\" is empty.", "Write something."));
      }
      return text.value();
    }
    wrongType(value.get(), "text", problems);
    return "";
  }

  Optional<String> optionalText(String name) {
    Optional<JsonValue> value = optional(name);
    if (value.isEmpty()) {
      return Optional.empty();
    }
    if (value.get() instanceof JsonValue.Str text) {
      return Optional.of(text.value());
    }
    wrongType(value.get(), "text", problems);
    return Optional.empty();
  }

  /** A number within bounds; empty if it is null, missing or wrong. */
  OptionalDouble optionalNumber(String name, double minimum, double maximum) {
    Optional<JsonValue> value = optional(name);
    if (value.isEmpty() || value.get() instanceof JsonValue.Null) {
      return OptionalDouble.empty();
    }
    if (!(value.get() instanceof JsonValue.Num number)) {
      wrongType(value.get(), "a number", problems);
      return OptionalDouble.empty();
    }
    return inRange(name, number, minimum, maximum)
        ? OptionalDouble.of(number.value())
        : OptionalDouble.empty();
  }

  private boolean inRange(String name, JsonValue.Num number, double minimum, double maximum) {
    if (number.value() >= minimum && number.value() <= maximum) {
      return true;
    }
    problems.add(
        Problem.error(
            number.where(),
            "out-of-range",
            "\"" + name + "\" must be from " + plain(minimum) + " to " + plain(maximum) + ".",
            ""));
    return false;
  }

  private static String plain(double value) {
    return value == Math.rint(value) ? Long.toString((long) value) : Double.toString(value);
  }

  /** A whole number within bounds; the lower bound after a problem. */
  int whole(String name, int minimum, int maximum) {
    Optional<JsonValue> value = required(name);
    if (value.isEmpty()) {
      return minimum;
    }
    if (!(value.get() instanceof JsonValue.Num number)) {
      wrongType(value.get(), "a whole number", problems);
      return minimum;
    }
    if (!number.isWhole()) {
      problems.add(
          Problem.error(
              number.where(), "wrong-type", "\"" + name + "\" must be a whole number.", ""));
      return minimum;
    }
    return inRange(name, number, minimum, maximum) ? (int) number.value() : minimum;
  }

  boolean flag(String name, boolean otherwise) {
    Optional<JsonValue> value = optional(name);
    if (value.isEmpty()) {
      return otherwise;
    }
    if (value.get() instanceof JsonValue.Bool flag) {
      return flag.value();
    }
    wrongType(value.get(), "true or false", problems);
    return otherwise;
  }

  /** The items of a list that must be there. */
  List<JsonValue> list(String name) {
    return required(name).map(v -> items(v, problems)).orElse(List.of());
  }

  List<JsonValue> optionalList(String name) {
    return optional(name).map(v -> items(v, problems)).orElse(List.of());
  }

  List<String> texts(String name) {
    return texts(list(name), problems);
  }

  List<String> optionalTexts(String name) {
    return texts(optionalList(name), problems);
  }

  /** Reports every member that was not asked for. */
  void finish() {
    for (JsonValue.Member member : object.members()) {
      if (!known.contains(member.name())) {
        Optional<String> meant = Hint.nearest(member.name(), known);
        meant.ifPresent(this::takeBack);
        problems.add(
            Problem.error(
                member.nameWhere(),
                "unknown-key",
                "\"" + member.name() + "\" means nothing here.",
                Hint.didYouMean(member.name(), known)));
      }
    }
  }

  private void takeBack(String name) {
    for (Missing one : missing) {
      if (one.names().contains(name)) {
        problems.remove(one.problem());
      }
    }
  }

  static List<JsonValue> items(JsonValue value, List<Problem> problems) {
    if (value instanceof JsonValue.Arr array) {
      return array.items();
    }
    wrongType(value, "a list", problems);
    return List.of();
  }

  /** The texts among these values; a problem for each other one and each empty one. */
  static List<String> texts(List<JsonValue> values, List<Problem> problems) {
    List<String> texts = new ArrayList<>();
    for (JsonValue value : values) {
      if (!(value instanceof JsonValue.Str text)) {
        wrongType(value, "text", problems);
      } else if (text.value().isBlank()) {
        problems.add(
            Problem.error(text.where(), "missing", "This text is empty.", "Write something."));
      } else {
        texts.add(text.value());
      }
    }
    return texts;
  }

  static void wrongType(JsonValue value, String wanted, List<Problem> problems) {
    problems.add(
        Problem.error(
            value.where(),
            "wrong-type",
            "This should be " + wanted + ", not " + value.kind() + ".",
            ""));
  }
}
