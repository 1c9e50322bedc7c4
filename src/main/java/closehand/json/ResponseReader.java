package closehand.json;

import closehand.bank.Field;
import closehand.bank.Problem;
import closehand.bank.Questionnaire;
import closehand.bank.Where;
import closehand.interview.Answer;
import closehand.interview.Answers;
import closehand.interview.PlainText;
import closehand.interview.Provenance;
import closehand.interview.Validity;
import closehand.interview.Value;
import closehand.interview.Wording;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Reads an HL7 FHIR R4 QuestionnaireResponse.
 *
 * <p>Answers are matched by link id alone, so a response made with another version of the
 * questionnaire can be read. Whatever does not fit is left out, with a warning that says where, and
 * listed; nothing is guessed.
 */
public final class ResponseReader {
  static final String ABSENT = FhirExtensions.HL7 + "data-absent-reason";
  static final String ANSWERED_BY = FhirExtensions.OWN + "answered-by";
  static final String HOW_KNOWN = FhirExtensions.OWN + "how-known";
  static final String NOTE = FhirExtensions.OWN + "interviewer-note";

  private final Map<String, Field> fields;
  private final List<Problem> problems;
  private final Map<String, Answers.Recorded> found = new LinkedHashMap<>();
  private final List<String> dropped = new ArrayList<>();

  private ResponseReader(Questionnaire questionnaire, List<Problem> problems) {
    this.fields = questionnaire.fieldsByFact();
    this.problems = problems;
  }

  /**
   * What a response holds.
   *
   * @param answers what fits the questionnaire, in the order written
   * @param dropped link ids of the answers that were left out
   */
  public record Result(Answers answers, List<String> dropped) {
    public Result {
      dropped = List.copyOf(dropped);
    }
  }

  /** Reads a response; empty if the document is none at all. */
  public static Optional<Result> read(
      JsonValue document, Questionnaire questionnaire, List<Problem> problems) {
    Optional<ObjectReading> in = ObjectReading.of(document, problems);
    if (in.isEmpty()) {
      return Optional.empty();
    }
    if (!in.get().text("resourceType").equals("QuestionnaireResponse")) {
      problems.add(
          Problem.error(
              document.where(), "wrong-type", "This is not a FHIR QuestionnaireResponse.", ""));
      return Optional.empty();
    }
    ResponseReader reader = new ResponseReader(questionnaire, problems);
    reader.madeWith(in.get(), questionnaire);
    reader.items(in.get().optionalList("item"));
    return Optional.of(new Result(new Answers(reader.found, List.of()), reader.dropped));
  }

  private void madeWith(ObjectReading in, Questionnaire questionnaire) {
    String made = in.optionalText("questionnaire").orElse("");
    String ours = questionnaire.url() + "|" + questionnaire.version();
    if (!made.equals(ours) && !made.equals(questionnaire.url())) {
      boolean sameForm = made.startsWith(questionnaire.url() + "|");
      problems.add(
          Problem.warning(
              in.where(),
              sameForm ? "other-version" : "other-questionnaire",
              "These answers were given to "
                  + (sameForm ? "another version of the questionnaire." : "another questionnaire."),
              "Answers are matched by their ids; please look them over."));
    }
  }

  private void items(List<JsonValue> values) {
    for (JsonValue value : values) {
      ObjectReading.of(value, problems).ifPresent(this::item);
    }
  }

  private void item(ObjectReading in) {
    String linkId = in.text("linkId");
    List<JsonValue> answers = in.optionalList("answer");
    FhirExtensions extensions = new FhirExtensions(in.optionalList("extension"), problems);
    Optional<String> absent = extensions.textOf(ABSENT, "valueCode");
    Field field = fields.get(linkId);
    if (!answers.isEmpty() || absent.isPresent()) {
      if (field == null) {
        drop(in.where(), linkId, "No question has this id.", "");
      } else if (found.containsKey(linkId)) {
        drop(in.where(), linkId, "This question is answered twice.", "The first answer counts.");
      } else {
        answer(in.where(), field, answers, absent)
            .ifPresent(a -> found.put(linkId, new Answers.Recorded(a, provenance(extensions))));
      }
    }
    items(in.optionalList("item"));
    for (JsonValue answer : answers) {
      if (answer instanceof JsonValue.Obj object) {
        object.member("item").ifPresent(i -> items(ObjectReading.items(i, problems)));
      }
    }
  }

  private Provenance provenance(FhirExtensions extensions) {
    String note = PlainText.of(extensions.textOf(NOTE, "valueString").orElse(""));
    return new Provenance(
        extensions
            .textOf(ANSWERED_BY, "valueCode")
            .flatMap(Provenance.By::of)
            .orElse(Provenance.By.PLAYER),
        extensions
            .textOf(HOW_KNOWN, "valueCode")
            .flatMap(Provenance.How::of)
            .orElse(Provenance.How.TOLD),
        note.length() <= Validity.LONGEST_NOTE ? note : note.substring(0, Validity.LONGEST_NOTE));
  }

  private Optional<Answer> answer(
      Where where, Field field, List<JsonValue> answers, Optional<String> absent) {
    Optional<String> code = absent.or(() -> absentReason(answers));
    if (code.isPresent()) {
      Optional<Answer> reason = reason(code.get()).map(Answer.Absent::new);
      if (reason.isEmpty()) {
        drop(where, field.fact(), "This reason for a missing answer is not known here.", "");
      }
      return reason;
    }
    Optional<Value> value = new AnswerValues(field.type()).of(answers);
    if (value.isEmpty() || Validity.refusal(field.type(), value.get()).isPresent()) {
      drop(
          where,
          field.fact(),
          "This answer does not fit its question.",
          Wording.accepted(field.type()));
      return Optional.empty();
    }
    return Optional.of(new Answer.Given(Validity.kept(field.type(), value.get())));
  }

  /** The reason where it stands on the only answer, or inside its value. */
  private Optional<String> absentReason(List<JsonValue> answers) {
    if (answers.size() != 1 || !(answers.get(0) instanceof JsonValue.Obj answer)) {
      return Optional.empty();
    }
    Optional<String> code = absentReason(answer);
    for (JsonValue.Member member : answer.members()) {
      boolean beside = member.name().startsWith("_value") || member.name().startsWith("value");
      if (code.isEmpty() && beside && member.value() instanceof JsonValue.Obj inside) {
        code = absentReason(inside);
      }
    }
    return code;
  }

  private Optional<String> absentReason(JsonValue.Obj object) {
    return object
        .member("extension")
        .flatMap(
            e ->
                new FhirExtensions(ObjectReading.items(e, problems), problems)
                    .textOf(ABSENT, "valueCode"));
  }

  /** Codes of HL7's code system data-absent-reason that say what an answer here can say. */
  private static Optional<Answer.Reason> reason(String code) {
    return switch (code) {
      case "asked-unknown", "unknown" -> Optional.of(Answer.Reason.UNKNOWN);
      case "asked-declined" -> Optional.of(Answer.Reason.DECLINED);
      case "not-applicable" -> Optional.of(Answer.Reason.NOT_APPLICABLE);
      case "not-performed", "temp-unknown" -> Optional.of(Answer.Reason.LATER);
      default -> Optional.empty();
    };
  }

  private void drop(Where where, String linkId, String what, String mend) {
    dropped.add(linkId);
    String left = "\"" + linkId + "\": " + what + " It is left out.";
    problems.add(Problem.warning(where, "answer-left-out", left, mend));
  }
}
