package closehand.json;

import closehand.bank.FactType;
import closehand.bank.Field;
import closehand.bank.Problem;
import closehand.bank.Questionnaire;
import closehand.bank.Where;
import closehand.interview.Answer;
import closehand.interview.Answers;
import closehand.interview.Provenance;
import closehand.interview.Validity;
import closehand.interview.Value;
import closehand.interview.Wording;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Reads the answers of a case that stand beside the response: fact id to value and provenance. */
final class BesideReader {
  private final Map<String, Field> fields;
  private final List<Problem> problems;
  private final List<String> dropped = new ArrayList<>();

  BesideReader(Questionnaire questionnaire, List<Problem> problems) {
    this.fields = questionnaire.fieldsByFact();
    this.problems = problems;
  }

  /** Fact ids of answers that were left out so far. */
  List<String> dropped() {
    return dropped;
  }

  Map<String, Answers.Recorded> read(JsonValue value) {
    Map<String, Answers.Recorded> answers = new LinkedHashMap<>();
    if (value instanceof JsonValue.Obj object) {
      for (JsonValue.Member member : object.members()) {
        ObjectReading.of(member.value(), problems)
            .flatMap(in -> recorded(member, in))
            .ifPresent(recorded -> answers.put(member.name(), recorded));
      }
    } else {
      ObjectReading.wrongType(value, "an object with one member a fact", problems);
    }
    return answers;
  }

  private Optional<Answers.Recorded> recorded(JsonValue.Member member, ObjectReading in) {
    Field field = fields.get(member.name());
    if (field == null) {
      drop(member.nameWhere(), member.name(), "No question has this id.", "");
      return Optional.empty();
    }
    Optional<Answer> answer = answer(field.type(), in);
    if (answer.isEmpty()) {
      drop(
          member.nameWhere(),
          member.name(),
          "This answer does not fit its question.",
          Wording.accepted(field.type()));
    }
    return answer.map(a -> new Answers.Recorded(a, provenance(in)));
  }

  private static Optional<Answer> answer(FactType type, ObjectReading in) {
    Optional<JsonValue> value = in.optional("value");
    if (value.isEmpty()) {
      return in.optionalText("absent").flatMap(Answer.Reason::of).map(Answer.Absent::new);
    }
    return value(type, value.get())
        .filter(v -> Validity.refusal(type, v).isEmpty())
        .map(v -> new Answer.Given(Validity.kept(type, v)));
  }

  private static Optional<Value> value(FactType type, JsonValue value) {
    if (value instanceof JsonValue.Bool flag) {
      return Optional.of(new Value.Flag(flag.value()));
    }
    if (value instanceof JsonValue.Num number) {
      return Optional.of(new Value.Number(number.value()));
    }
    if (value instanceof JsonValue.Str text) {
      return Optional.of(
          type instanceof FactType.OneOf
              ? new Value.Code(text.value())
              : new Value.Text(text.value()));
    }
    if (!(value instanceof JsonValue.Arr list)) {
      return Optional.empty();
    }
    List<String> words = new ArrayList<>();
    for (JsonValue item : list.items()) {
      if (!(item instanceof JsonValue.Str word)) {
        return Optional.empty();
      }
      words.add(word.value());
    }
    return Optional.of(
        type instanceof FactType.SeveralOf ? new Value.Codes(words) : new Value.Texts(words));
  }

  private static Provenance provenance(ObjectReading in) {
    return new Provenance(
        in.optionalText("by").flatMap(Provenance.By::of).orElse(Provenance.By.PLAYER),
        in.optionalText("how").flatMap(Provenance.How::of).orElse(Provenance.How.TOLD),
        in.optionalText("note").orElse(""));
  }

  private void drop(Where where, String fact, String what, String mend) {
    dropped.add(fact);
    String left = "\"" + fact + "\": " + what + " It is left out.";
    problems.add(Problem.warning(where, "answer-left-out", left, mend));
  }
}
