package closehand.json;

import closehand.bank.Condition;
import closehand.bank.Condition.Operand;
import closehand.bank.Hint;
import closehand.bank.Problem;
import closehand.bank.Where;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/**
 * Reads conditions: {@code [fact, operator, value]}, {@code {"all": [...]}}, {@code {"any":
 * [...]}}, {@code {"not": ..}}, {@code {"atLeast": n, "of": [...]}}, {@code {"anyGame": ..}},
 * {@code {"everyGame": ..}} or {@code "always"}.
 */
final class ConditionReader {
  /** Deepest nesting; deeper conditions cannot be read by people. */
  static final int MAXIMUM_DEPTH = 12;

  static final Set<String> OPERATORS = Set.of("<", "<=", ">", ">=", "is", "in", "has", "how");
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
              "Use a term."));
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
    return shape(value.where());
  }

  private Condition shape(Where where) {
    problems.add(
        Problem.error(
            where,
            "condition-shape",
            "This is not a condition.",
            "Write [fact, operator, value], {\"all\": [...]}, {\"any\": [...]}, {\"not\": ...},"
                + " {\"atLeast\": n, \"of\": [...]}, {\"anyGame\": ...}, {\"everyGame\": ...} or \"always\"."));
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
                "\"" + member.name() + "\" is not a way to combine conditions.",
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
      return shape(where);
    }
    JsonValue.Member only = object.members().get(0);
    return switch (only.name()) {
      case "all" -> new Condition.All(parts(only.value(), depth), where);
      case "any" -> new Condition.Any(parts(only.value(), depth), where);
      case "not" -> new Condition.Not(read(only.value(), depth + 1), where);
      case "anyGame" -> new Condition.AnyGame(read(only.value(), depth + 1), where);
      case "everyGame" -> new Condition.EveryGame(read(only.value(), depth + 1), where);
      default -> shape(where);
    };
  }

  private Condition atLeast(JsonValue.Obj object, int depth) {
    ObjectReading reading = new ObjectReading(object, problems);
    List<Condition> parts = parts(reading.required("of").orElseThrow(), depth);
    int count = reading.whole("atLeast", 1, Math.max(1, parts.size()));
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
    List<Condition> parts = new ArrayList<>();
    for (JsonValue item : items) {
      parts.add(read(item, depth + 1));
    }
    return parts;
  }

  private Condition test(JsonValue.Arr test) {
    List<JsonValue> items = test.items();
    if (items.size() != 3
        || !(items.get(0) instanceof JsonValue.Str fact)
        || !(items.get(1) instanceof JsonValue.Str operator)) {
      return shape(test.where());
    }
    if (!OPERATORS.contains(operator.value())) {
      String hint =
          operator.value().startsWith("=")
              ? "For equality write \"is\"."
              : Hint.didYouMean(operator.value(), OPERATORS);
      problems.add(
          Problem.error(
              operator.where(),
              "unknown-op",
              "\"" + operator.value() + "\" is not a comparison (<, <=, >, >=, is, in, has, how).",
              hint));
      return new Condition.Always(test.where());
    }
    return new Condition.Test(
        fact.value(),
        operator.value(),
        operand(items.get(2)),
        test.where(),
        fact.where(),
        operator.where());
  }

  private Operand operand(JsonValue value) {
    if (value instanceof JsonValue.Num number) {
      return new Operand.Number(number.value(), number.where());
    }
    if (value instanceof JsonValue.Bool flag) {
      return new Operand.Flag(flag.value(), flag.where());
    }
    if (value instanceof JsonValue.Str code) {
      return new Operand.Code(code.value(), code.where());
    }
    if (value instanceof JsonValue.Arr list) {
      return codes(list);
    }
    ObjectReading.wrongType(value, "a number, a code, true, false or a list of codes", problems);
    return new Operand.Flag(true, value.where());
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
