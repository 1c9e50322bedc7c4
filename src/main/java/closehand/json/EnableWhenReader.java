package closehand.json;

import closehand.bank.EnableWhen;
import closehand.bank.EnableWhen.Expected;
import closehand.bank.EnableWhen.Operator;
import closehand.bank.Hint;
import closehand.bank.Problem;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** Reads {@code enableWhen} and {@code enableBehavior} of one item. */
final class EnableWhenReader {
  private static final List<String> BEHAVIOURS = List.of("all", "any");
  private static final List<String> VALUES =
      List.of("answerBoolean", "answerInteger", "answerDecimal", "answerCoding", "answerString");

  private final List<Problem> problems;

  private EnableWhenReader(List<Problem> problems) {
    this.problems = problems;
  }

  static Optional<EnableWhen> read(ObjectReading in, List<Problem> problems) {
    return new EnableWhenReader(problems).condition(in);
  }

  private Optional<EnableWhen> condition(ObjectReading in) {
    Optional<JsonValue> list = in.optional("enableWhen");
    Optional<String> behaviour = in.optionalText("enableBehavior");
    if (list.isEmpty()) {
      return Optional.empty();
    }
    List<JsonValue> values = ObjectReading.items(list.get(), problems);
    if (values.isEmpty() && list.get() instanceof JsonValue.Arr) {
      problems.add(
          Problem.error(
              list.get().where(), "empty-list", "This list is empty.", "Remove enableWhen."));
    }
    if (values.size() > 1 && in.optional("enableBehavior").isEmpty()) {
      in.missing(
          List.of("enableBehavior"),
          "Several conditions need enableBehavior.",
          "Add \"all\" or \"any\".");
    }
    if (behaviour.isPresent() && !BEHAVIOURS.contains(behaviour.get())) {
      problems.add(
          Problem.error(
              in.where("enableBehavior"),
              "unknown-value",
              "enableBehavior is \"all\" or \"any\".",
              Hint.didYouMean(behaviour.get(), BEHAVIOURS)));
    }
    List<EnableWhen.Test> tests = new ArrayList<>();
    for (JsonValue value : values) {
      ObjectReading.of(value, problems).flatMap(this::test).ifPresent(tests::add);
    }
    return tests.isEmpty()
        ? Optional.empty()
        : Optional.of(new EnableWhen(tests, !behaviour.orElse("all").equals("any")));
  }

  private Optional<EnableWhen.Test> test(ObjectReading in) {
    String question = in.text("question");
    Optional<Operator> operator = operator(in);
    Optional<Expected> expected = expected(in);
    in.finish();
    return operator.isPresent() && expected.isPresent()
        ? Optional.of(new EnableWhen.Test(question, operator.get(), expected.get(), in.where()))
        : Optional.empty();
  }

  private Optional<Operator> operator(ObjectReading in) {
    String code = in.text("operator");
    for (Operator operator : Operator.values()) {
      if (operator.code().equals(code)) {
        return Optional.of(operator);
      }
    }
    if (!code.isEmpty()) {
      List<String> known = Arrays.stream(Operator.values()).map(Operator::code).toList();
      problems.add(
          Problem.error(
              in.where("operator"),
              "unknown-op",
              "\"" + code + "\" is not a comparison (" + String.join(" ", known) + ").",
              hint(code, known)));
    }
    return Optional.empty();
  }

  private static String hint(String code, List<String> known) {
    return switch (code) {
      case "==", "===", "is" -> "Write \"=\".";
      case "<>", "=!" -> "Write \"!=\".";
      case "=<" -> "Write \"<=\".";
      case "=>" -> "Write \">=\".";
      default -> Hint.didYouMean(code, known);
    };
  }

  private Optional<Expected> expected(ObjectReading in) {
    Optional<Expected> expected = Optional.empty();
    int found = 0;
    for (String name : VALUES) {
      Optional<JsonValue> value = in.optional(name);
      if (value.isPresent()) {
        found++;
        expected = expected(name, value.get());
      }
    }
    if (found == 0) {
      in.missing(
          VALUES,
          "There is nothing to compare with.",
          "Add one of " + String.join(", ", VALUES) + ".");
    } else if (found > 1) {
      problems.add(
          Problem.error(
              in.where(),
              "condition-shape",
              "There are " + found + " values to compare with.",
              "Keep one."));
      return Optional.empty();
    }
    return expected;
  }

  private Optional<Expected> expected(String name, JsonValue value) {
    switch (name) {
      case "answerBoolean" -> {
        if (value instanceof JsonValue.Bool flag) {
          return Optional.of(new Expected.Flag(flag.value()));
        }
        return wrong(value, "true or false");
      }
      case "answerInteger" -> {
        if (value instanceof JsonValue.Num number && number.isWhole()) {
          return Optional.of(new Expected.Number(number.value(), true));
        }
        return value instanceof JsonValue.Num ? fraction(value) : wrong(value, "a whole number");
      }
      case "answerDecimal" -> {
        if (value instanceof JsonValue.Num number) {
          return Optional.of(new Expected.Number(number.value(), false));
        }
        return wrong(value, "a number");
      }
      case "answerString" -> {
        if (value instanceof JsonValue.Str words) {
          return Optional.of(new Expected.Text(words.value()));
        }
        return wrong(value, "text");
      }
      default -> {
        return ObjectReading.of(value, problems).map(EnableWhenReader::coded);
      }
    }
  }

  private static Expected coded(ObjectReading in) {
    Expected.Coded coded = new Expected.Coded(in.text("system"), in.text("code"));
    in.optionalText("display");
    in.finish();
    return coded;
  }

  private Optional<Expected> fraction(JsonValue value) {
    problems.add(
        Problem.error(
            value.where(), "wrong-type", "\"answerInteger\" must be a whole number.", ""));
    return Optional.empty();
  }

  private Optional<Expected> wrong(JsonValue value, String wanted) {
    ObjectReading.wrongType(value, wanted, problems);
    return Optional.empty();
  }
}
