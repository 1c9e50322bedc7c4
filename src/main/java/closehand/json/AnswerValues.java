package closehand.json;

import closehand.bank.FactType;
import closehand.bank.Option;
import closehand.interview.Value;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Reads the answers of one response item as a value of its question's kind. */
final class AnswerValues {
  private final FactType type;

  AnswerValues(FactType type) {
    this.type = type;
  }

  /** The value; empty if any answer is of another kind, or one is too many. */
  Optional<Value> of(List<JsonValue> answers) {
    if (type instanceof FactType.SeveralOf) {
      return all(answers, this::code).map(Value.Codes::new);
    }
    if (type instanceof FactType.WordList) {
      return all(answers, this::words).map(Value.Texts::new);
    }
    return answers.size() == 1 ? single(answers.get(0)) : Optional.empty();
  }

  private Optional<Value> single(JsonValue answer) {
    if (type instanceof FactType.YesNo) {
      return member(answer, "valueBoolean") instanceof JsonValue.Bool flag
          ? Optional.of(new Value.Flag(flag.value()))
          : Optional.empty();
    }
    if (type instanceof FactType.Amount) {
      boolean whole = member(answer, "valueInteger") instanceof JsonValue.Num;
      return member(answer, whole ? "valueInteger" : "valueDecimal") instanceof JsonValue.Num number
          ? Optional.of(new Value.Number(number.value()))
          : Optional.empty();
    }
    return type instanceof FactType.OneOf
        ? code(answer).map(Value.Code::new)
        : words(answer).map(Value.Text::new);
  }

  private interface Part {
    Optional<String> of(JsonValue answer);
  }

  private static Optional<List<String>> all(List<JsonValue> answers, Part part) {
    List<String> parts = new ArrayList<>();
    for (JsonValue answer : answers) {
      Optional<String> one = part.of(answer);
      if (one.isEmpty()) {
        return Optional.empty();
      }
      parts.add(one.get());
    }
    return Optional.of(parts);
  }

  private Optional<String> code(JsonValue answer) {
    if (member(answer, "valueCoding") instanceof JsonValue.Obj coding
        && member(coding, "code") instanceof JsonValue.Str code) {
      Optional<Option> option = type.option(code.value());
      boolean sameSystem =
          !(member(coding, "system") instanceof JsonValue.Str system)
              || option.filter(o -> o.system().equals(system.value())).isPresent();
      return sameSystem ? Optional.of(code.value()) : Optional.empty();
    }
    return Optional.empty();
  }

  private Optional<String> words(JsonValue answer) {
    return member(answer, "valueString") instanceof JsonValue.Str words
        ? Optional.of(words.value())
        : Optional.empty();
  }

  private static JsonValue member(JsonValue of, String name) {
    return of instanceof JsonValue.Obj object
        ? object.member(name).orElseGet(() -> new JsonValue.Null(of.where()))
        : new JsonValue.Null(of.where());
  }
}
