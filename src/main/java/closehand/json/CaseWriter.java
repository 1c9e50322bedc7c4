package closehand.json;

import closehand.bank.Field;
import closehand.bank.Questionnaire;
import closehand.interview.Answer;
import closehand.interview.Answers;
import closehand.interview.Enablement;
import closehand.interview.PlainText;
import closehand.interview.Provenance;
import closehand.interview.SavedCase;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Writes a saved case as one JSON document.
 *
 * <p>Format and schema come first, so that any later program knows what it reads. The answers that
 * apply stand in it as a FHIR QuestionnaireResponse, which other programs can take out. What a
 * response cannot hold stands beside it: answers set aside, and choices of none where the question
 * has no option that says so.
 */
public final class CaseWriter {
  static final String FORMAT = "closehand-case";
  static final int SCHEMA = 4;

  private final JsonGenerator out;

  private CaseWriter(JsonGenerator out) {
    this.out = out;
  }

  /** The whole document, ending in a line break. */
  public static String write(CaseDocument document, Questionnaire questionnaire) {
    return PrettyJson.write(out -> new CaseWriter(out).document(document, questionnaire));
  }

  private void document(CaseDocument document, Questionnaire questionnaire) throws IOException {
    SavedCase saved = document.saved();
    Enablement enablement = Enablement.of(questionnaire, saved.answers());
    out.writeStartObject();
    out.writeStringField("format", FORMAT);
    out.writeNumberField("schema", SCHEMA);
    out.writeStringField("name", saved.name());
    out.writeObjectFieldStart("bank");
    out.writeStringField("url", saved.bank().url());
    out.writeStringField("version", saved.bank().version());
    out.writeStringField("fingerprint", saved.bank().fingerprint());
    out.writeEndObject();
    out.writeStringField("asker", saved.asker().code());
    out.writeStringField("route", saved.route().code());
    if (saved.at().isPresent()) {
      out.writeStringField("at", saved.at().get());
    }
    out.writeStringField("started", saved.started());
    out.writeStringField("saved", saved.saved());
    out.writeFieldName("response");
    ResponseWriter.write(questionnaire, saved.answers(), header(saved), out);
    beside("setAside", enablement.setAside().byFact());
    beside("noneOfThem", noneOfThem(questionnaire, enablement.effective()));
    lowered(saved.answers().lowered());
    halfTyped(saved.halfTyped());
    new RecordWriter(out).write(document.record());
    room("plans", document.plans());
    room("trials", document.trials());
    out.writeEndObject();
  }

  private void halfTyped(Map<String, String> texts) throws IOException {
    out.writeObjectFieldStart("halfTyped");
    for (Map.Entry<String, String> entry : texts.entrySet()) {
      out.writeStringField(entry.getKey(), PlainText.of(entry.getValue()));
    }
    out.writeEndObject();
  }

  private void room(String name, List<JsonValue.Obj> objects) throws IOException {
    out.writeArrayFieldStart(name);
    for (JsonValue.Obj object : objects) {
      JsonTree.write(object, out);
    }
    out.writeEndArray();
  }

  private static ResponseWriter.Header header(SavedCase saved) {
    return new ResponseWriter.Header(
        saved.name(), saved.asker().code(), saved.saved(), /* stopped= */ false);
  }

  private static Map<String, Answers.Recorded> noneOfThem(
      Questionnaire questionnaire, Answers effective) {
    Map<String, Field> fields = questionnaire.fieldsByFact();
    Map<String, Answers.Recorded> none = new LinkedHashMap<>();
    effective
        .byFact()
        .forEach(
            (fact, recorded) -> {
              Field field = fields.get(fact);
              if (field != null && !ResponseWriter.holds(field, recorded.answer())) {
                none.put(fact, recorded);
              }
            });
    return none;
  }

  private void beside(String name, Map<String, Answers.Recorded> answers) throws IOException {
    if (answers.isEmpty()) {
      return;
    }
    out.writeObjectFieldStart(name);
    for (Map.Entry<String, Answers.Recorded> entry : answers.entrySet()) {
      out.writeObjectFieldStart(entry.getKey());
      answer(entry.getValue().answer());
      provenance(entry.getValue().provenance());
      out.writeEndObject();
    }
    out.writeEndObject();
  }

  private void answer(Answer answer) throws IOException {
    if (answer instanceof Answer.Given given) {
      out.writeFieldName("value");
      ValueWriter.value(given.value(), out);
    } else {
      out.writeStringField("absent", ((Answer.Absent) answer).reason().code());
    }
  }

  private void provenance(Provenance provenance) throws IOException {
    out.writeStringField("by", provenance.by().code());
    out.writeStringField("how", provenance.how().code());
    if (!provenance.note().isBlank()) {
      out.writeStringField("note", PlainText.of(provenance.note()));
    }
  }

  private void lowered(List<Answers.Lowered> lowered) throws IOException {
    if (lowered.isEmpty()) {
      return;
    }
    out.writeArrayFieldStart("lowered");
    for (Answers.Lowered one : lowered) {
      out.writeStartObject();
      out.writeStringField("code", one.code());
      out.writeStringField("by", one.by());
      out.writeStringField("date", one.date());
      out.writeStringField("reason", one.reason());
      out.writeEndObject();
    }
    out.writeEndArray();
  }
}
