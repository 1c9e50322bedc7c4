package closehand.measure.task;

import closehand.bank.Condition;
import closehand.bank.Condition.Operand;
import closehand.bank.Task;
import closehand.interview.Measured;
import closehand.interview.Value;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** What several goes come to, and whether a condition over it holds. */
final class Counted {
  private final Task task;
  private final Map<String, Value> values;

  private Counted(Task task, Map<String, Value> values) {
    this.task = task;
    this.values = values;
  }

  /**
   * Puts goes together: the median of counts, rounded down between two; of choices the one in the
   * middle of the list; of yes and no, yes if it was so in most goes; of lists what was picked in
   * most goes.
   *
   * @param once what was asked once at the end
   */
  static Counted of(Task task, List<Measured.Go> goes, Map<String, Value> once) {
    Map<String, Value> values = new LinkedHashMap<>(once);
    List<Measured.Go> counting = goes.stream().filter(Measured.Go::counts).toList();
    for (Task.Measure measure : task.measures()) {
      List<Value> each = new ArrayList<>();
      for (Measured.Go go : counting) {
        Optional.ofNullable(go.values().get(measure.id())).ifPresent(each::add);
      }
      if (measure.eachGo() && !each.isEmpty()) {
        values.put(measure.id(), together(measure, each));
      }
    }
    return new Counted(task, values);
  }

  /** By how much the second count lies below the first, in percent, never less than 0. */
  static int drop(int first, int last) {
    return first <= 0 ? 0 : Math.max(0, Math.round(100f * (first - last) / first));
  }

  private static Value together(Task.Measure measure, List<Value> each) {
    return switch (measure.kind()) {
      case COUNT, DROP ->
          new Value.Number(median(each.stream().map(v -> ((Value.Number) v).value()).toList()));
      case YES_NO ->
          new Value.Flag(
              2 * each.stream().filter(v -> v instanceof Value.Flag f && f.value()).count()
                  > each.size());
      case CHOICE -> new Value.Code(middle(measure, each));
      case SEVERAL -> new Value.Codes(most(measure, each));
    };
  }

  /** The median, rounded down to a whole number between two. */
  static double median(List<Double> numbers) {
    List<Double> sorted = numbers.stream().sorted().toList();
    int size = sorted.size();
    return size % 2 == 1
        ? sorted.get(size / 2)
        : Math.floor((sorted.get(size / 2 - 1) + sorted.get(size / 2)) / 2);
  }

  private static String middle(Task.Measure measure, List<Value> each) {
    List<String> codes = measure.options().stream().map(Task.Choice::code).toList();
    List<Double> places =
        each.stream().map(v -> (double) codes.indexOf(text(v))).filter(i -> i >= 0).toList();
    return codes.get((int) median(places));
  }

  private static List<String> most(Task.Measure measure, List<Value> each) {
    Map<String, Integer> often = new TreeMap<>();
    for (Value value : each) {
      texts(value).forEach(code -> often.merge(code, 1, Integer::sum));
    }
    return measure.options().stream()
        .map(Task.Choice::code)
        .filter(code -> 2 * often.getOrDefault(code, 0) > each.size())
        .toList();
  }

  private static String text(Value value) {
    return value instanceof Value.Code code
        ? code.code()
        : value instanceof Value.Text words ? words.words() : "";
  }

  private static List<String> texts(Value value) {
    return value instanceof Value.Codes codes
        ? codes.codes()
        : value instanceof Value.Texts texts ? texts.words() : List.of();
  }

  Map<String, Value> values() {
    return values;
  }

  /** The answers that come of it; a list from which nothing was picked stays empty. */
  Map<String, Value> results() {
    Map<String, Value> results = new LinkedHashMap<>();
    for (Task.Result result : task.results()) {
      if (!result.measure().isEmpty()) {
        Optional.ofNullable(values.get(result.measure()))
            .ifPresent(v -> results.put(result.fact(), times(v, result.times())));
      } else {
        result.cases().stream()
            .filter(c -> holds(c.when()))
            .findFirst()
            .ifPresent(c -> results.put(result.fact(), value(c.value())));
      }
    }
    return results;
  }

  /** What it says to the player. */
  String reading() {
    return task.readings().stream()
        .filter(r -> holds(r.when()))
        .map(Task.Reading::say)
        .findFirst()
        .orElse("");
  }

  private static Value times(Value value, int times) {
    return value instanceof Value.Number number ? new Value.Number(number.value() * times) : value;
  }

  private static Value value(Operand operand) {
    if (operand instanceof Operand.Number number) {
      return new Value.Number(number.value());
    }
    if (operand instanceof Operand.Flag flag) {
      return new Value.Flag(flag.value());
    }
    return new Value.Code(((Operand.Code) operand).value());
  }

  /** Whether a condition over measures holds; what was not counted makes a comparison false. */
  boolean holds(Condition condition) {
    if (condition instanceof Condition.All all) {
      return all.parts().stream().allMatch(this::holds);
    }
    if (condition instanceof Condition.Any any) {
      return any.parts().stream().anyMatch(this::holds);
    }
    if (condition instanceof Condition.Not not) {
      return !holds(not.part());
    }
    if (condition instanceof Condition.AtLeast some) {
      return some.parts().stream().filter(this::holds).count() >= some.count();
    }
    return condition instanceof Condition.Always
        || (condition instanceof Condition.Test test && test(test));
  }

  private boolean test(Condition.Test test) {
    Value value = values.get(test.fact());
    if (value == null) {
      return false;
    }
    Operand operand = test.value();
    if (value instanceof Value.Number number && operand instanceof Operand.Number limit) {
      return switch (test.operator()) {
        case "<" -> number.value() < limit.value();
        case "<=" -> number.value() <= limit.value();
        case ">" -> number.value() > limit.value();
        case ">=" -> number.value() >= limit.value();
        default -> false;
      };
    }
    if (value instanceof Value.Flag flag && operand instanceof Operand.Flag wanted) {
      return flag.value() == wanted.value();
    }
    if (operand instanceof Operand.Code code) {
      return text(value).equals(code.value()) || texts(value).contains(code.value());
    }
    return operand instanceof Operand.Codes codes
        && codes.values().stream().anyMatch(c -> c.value().equals(text(value)));
  }
}
