package closehand.json;

import closehand.bank.EnableWhen;
import closehand.bank.EnableWhen.Expected;
import closehand.bank.EnableWhen.Operator;
import closehand.bank.Problem;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Reads {@code enableWhen} and {@code enableBehavior} of one item. */
final class EnableWhenReader {
  private EnableWhenReader() {}

  static Optional<EnableWhen> read(ObjectReading in, List<Problem> problems) {
    List<JsonValue> values = in.optionalList("enableWhen");
    Optional<String> behaviour = in.optionalText("enableBehavior");
    if (values.isEmpty()) {
      return Optional.empty();
    }
    if (values.size() > 1 && behaviour.isEmpty()) {
      problems.add(
          Problem.error(
              in.where(),
              "missing",
              "Several conditions need enableBehavior.",
              "Add \"all\" or \"any\"."));
    }
    if (behaviour.isPresent() && !List.of("all", "any").contains(behaviour.get())) {
      problems.add(
          Problem.error(in.where(), "unknown-value", "enableBehavior is \"all\" or \"any\".", ""));
    }
    List<EnableWhen.Test> tests = new ArrayList<>();
    for (JsonValue value : values) {
      ObjectReading.of(value, problems).flatMap(t -> test(t, problems)).ifPresent(tests::add);
    }
    return tests.isEmpty()
        ? Optional.empty()
        : Optional.of(new EnableWhen(tests, !behaviour.orElse("all").equals("any")));
  }

  private static Optional<EnableWhen.Test> test(ObjectReading in, List<Problem> problems) {
    String question = in.text("question");
    String code = in.text("operator");
    Optional<Expected> expected = expected(in);
    in.finish();
    for (Operator operator : Operator.values()) {
      if (operator.code().equals(code) && expected.isPresent()) {
        return Optional.of(new EnableWhen.Test(question, operator, expected.get(), in.where()));
      }
    }
    problems.add(
        Problem.error(
            in.where(),
            "condition-shape",
            "This condition cannot be read.",
            "It needs an operator (exists = != > < >= <=) and answerBoolean, answerInteger, answerDecimal, answerCoding or answerString."));
    return Optional.empty();
  }

  private static Optional<Expected> expected(ObjectReading in) {
    Optional<JsonValue> flag = in.optional("answerBoolean");
    Optional<JsonValue> whole = in.optional("answerInteger");
    Optional<JsonValue> decimal = in.optional("answerDecimal");
    Optional<JsonValue> coding = in.optional("answerCoding");
    Optional<JsonValue> text = in.optional("answerString");
    if (flag.orElse(null) instanceof JsonValue.Bool value) {
      return Optional.of(new Expected.Flag(value.value()));
    }
    if (whole.or(() -> decimal).orElse(null) instanceof JsonValue.Num number) {
      return Optional.of(new Expected.Number(number.value()));
    }
    if (text.orElse(null) instanceof JsonValue.Str words) {
      return Optional.of(new Expected.Text(words.value()));
    }
    return coding
        .flatMap(c -> ObjectReading.of(c, in.problems()))
        .map(
            c -> {
              Expected.Coded coded =
                  new Expected.Coded(c.optionalText("system").orElse(""), c.text("code"));
              c.optionalText("display");
              c.finish();
              return coded;
            });
  }
}
