package closehand.json;

import closehand.bank.Condition;
import closehand.bank.Condition.Operand;
import closehand.bank.Hint;
import closehand.bank.Problem;
import closehand.bank.Where;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Reads conditions: {@code [fact, operator, value]}, {@code {"all": [...]}}, {@code {"any":
 * [...]}}, {@code {"not": ..}}, {@code {"atLeast": n, "of": [...]}}, {@code {"anyGame": ..}},
 * {@code {"everyGame": ..}} or {@code "always"}.
 */
final class ConditionReader {
  /** Deepest nesting; deeper conditions cannot be read by people. */
  static final int MAXIMUM_DEPTH = 12;

  private static final List<String> OPERATORS =
      List.of("<", "<=", ">", ">=", "is", "in", "has", "how");

  private static final List<String> SHAPES =
      List.of("all", "any", "not", "atLeast", "of", "anyGame", "everyGame");

  private final List<Problem> problems;

  ConditionReader(List<Problem> problems) {
    this.problems = problems;
  }

  /** Reads one condition; after a problem the part that could not be read counts as always. */
  Condition read(JsonValue value) {
    return read(value, 1);
  }

  private Condition read(JsonValue value, int depth) {
    if (depth > MAXIMUM_DEPTH) {
      problems.add(
          Problem.error(
              value.where(),
              "too-deep",
              "Conditions are nested more than " + MAXIMUM_DEPTH + " deep here.",
              "Move the inner ones to a term."));
      return new Condition.Always(value.where());
    }
    if (value instanceof JsonValue.Arr test) {
      return test(test);
    }
    if (value instanceof JsonValue.Obj object) {
      return combined(object, depth);
    }
    if (value instanceof JsonValue.Str word && word.value().equals("always")) {
      return new Condition.Always(word.where());
    }
    return shape(
        value.where(),
        "This should be a condition, not " + value.kind() + ".",
        "Write [fact, operator, value], an object such as {\"all\": [...]}, or \"always\".");
  }

  private Condition shape(Where where, String what, String mend) {
    problems.add(Problem.error(where, "condition-shape", what, mend));
    return new Condition.Always(where);
  }

  private Condition combined(JsonValue.Obj object, int depth) {
    Where where = object.where();
    for (JsonValue.Member member : object.members()) {
      if (!SHAPES.contains(member.name())) {
        problems.add(
            Problem.error(
                member.nameWhere(),
                "unknown-key",
                "\""
                    + member.name()
                    + "\" is not a way to combine conditions ("
                    + String.join(", ", SHAPES)
                    + ").",
                Hint.didYouMean(member.name(), SHAPES)));
        return new Condition.Always(where);
      }
    }
    if (object.members().size() == 2
        && object.member("atLeast").isPresent()
        && object.member("of").isPresent()) {
      return atLeast(object, depth);
    }
    if (object.members().size() != 1) {
      return shape(
          where,
          "This object should hold one way to combine conditions.",
          "Keep one of all, any, not, anyGame, everyGame, or atLeast with of.");
    }
    JsonValue.Member only = object.members().get(0);
    return switch (only.name()) {
      case "all" -> new Condition.All(parts(only.value(), depth), where);
      case "any" -> new Condition.Any(parts(only.value(), depth), where);
      case "not" -> new Condition.Not(read(only.value(), depth + 1), where);
      case "anyGame" -> new Condition.AnyGame(read(only.value(), depth + 1), where);
      case "everyGame" -> new Condition.EveryGame(read(only.value(), depth + 1), where);
      default ->
          shape(where, "\"atLeast\" and \"of\" belong together.", "Add the one that is missing.");
    };
  }

  private Condition atLeast(JsonValue.Obj object, int depth) {
    ObjectReading reading = new ObjectReading(object, problems);
    List<Condition> parts = parts(reading.required("of").orElseThrow(), depth);
    int most = parts.isEmpty() ? Integer.MAX_VALUE : parts.size();
    int count = reading.whole("atLeast", 1, most);
    return new Condition.AtLeast(count, parts, object.where());
  }

  private List<Condition> parts(JsonValue value, int depth) {
    List<JsonValue> items = ObjectReading.items(value, problems);
    if (items.isEmpty() && value instanceof JsonValue.Arr) {
      problems.add(
          Problem.error(
              value.where(),
              "empty-list",
              "This list of conditions is empty.",
              "Add one or remove the list."));
    }
    if (isTest(items)) {
      shape(
          value.where(),
          "A comparison stands here where a list of conditions is needed.",
          "Put another pair of brackets around it.");
      return List.of();
    }
    List<Condition> parts = new ArrayList<>();
    for (JsonValue item : items) {
      parts.add(read(item, depth + 1));
    }
    return parts;
  }

  private static boolean isTest(List<JsonValue> items) {
    return items.size() == 3
        && items.get(0) instanceof JsonValue.Str
        && items.get(1) instanceof JsonValue.Str;
  }

  private Condition test(JsonValue.Arr test) {
    List<JsonValue> items = test.items();
    if (items.size() != 3
        || !(items.get(0) instanceof JsonValue.Str fact)
        || !(items.get(1) instanceof JsonValue.Str operator)) {
      return shape(
          test.where(),
          "A comparison is a list of three: fact, operator, value.",
          "Lists of conditions stand inside an object, such as {\"all\": [...]}.");
    }
    if (!OPERATORS.contains(operator.value())) {
      problems.add(
          Problem.error(
              operator.where(),
              "unknown-op",
              "\"" + operator.value() + "\" is not a comparison (<, <=, >, >=, is, in, has, how).",
              hint(operator.value())));
      return new Condition.Always(test.where());
    }
    Optional<Operand> operand = operand(items.get(2));
    return operand.isEmpty()
        ? new Condition.Always(test.where())
        : new Condition.Test(
            fact.value(),
            operator.value(),
            operand.get(),
            test.where(),
            fact.where(),
            operator.where());
  }

  private static String hint(String operator) {
    return switch (operator) {
      case "=", "==", "===", "equals" ->
          "Write \"is\" for an answer, and both \"<=\" and \">=\" for a number.";
      case "!=", "<>", "isNot" -> "Write {\"not\": [fact, \"is\", value]}.";
      case "=<" -> "Write \"<=\".";
      case "=>" -> "Write \">=\".";
      default -> Hint.didYouMean(operator, OPERATORS);
    };
  }

  private Optional<Operand> operand(JsonValue value) {
    if (value instanceof JsonValue.Num number) {
      return Optional.of(new Operand.Number(number.value(), number.where()));
    }
    if (value instanceof JsonValue.Bool flag) {
      return Optional.of(new Operand.Flag(flag.value(), flag.where()));
    }
    if (value instanceof JsonValue.Str code) {
      return Optional.of(new Operand.Code(code.value(), code.where()));
    }
    if (value instanceof JsonValue.Arr list) {
      return Optional.of(codes(list));
    }
    ObjectReading.wrongType(value, "a number, a code, true, false or a list of codes", problems);
    return Optional.empty();
  }

  private Operand codes(JsonValue.Arr list) {
    List<Operand.Code> codes = new ArrayList<>();
    for (JsonValue item : list.items()) {
      if (item instanceof JsonValue.Str code) {
        codes.add(new Operand.Code(code.value(), code.where()));
      } else if (item instanceof JsonValue.Num number) {
        codes.add(new Operand.Code(number.text(), number.where()));
      } else {
        ObjectReading.wrongType(item, "a code", problems);
      }
    }
    if (list.items().isEmpty()) {
      problems.add(
          Problem.error(list.where(), "empty-list", "This list of answers is empty.", "Add one."));
    }
    return new Operand.Codes(codes, list.where());
  }
}
