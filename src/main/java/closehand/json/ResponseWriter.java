package closehand.json;

import closehand.bank.FactType;
import closehand.bank.Field;
import closehand.bank.Option;
import closehand.bank.Question;
import closehand.bank.Questionnaire;
import closehand.interview.Answer;
import closehand.interview.Answers;
import closehand.interview.Enablement;
import closehand.interview.PlainText;
import closehand.interview.Value;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;

/**
 * Writes answers as an HL7 FHIR R4 QuestionnaireResponse.
 *
 * <p>Only answers that apply are in it, nested and ordered like the questionnaire. An answer
 * without a value carries the reason as {@code data-absent-reason}. Choosing none of several
 * answers is written as the option that says so; where there is no such option, nothing is written.
 */
public final class ResponseWriter {
  private final Questionnaire questionnaire;
  private final Answers effective;
  private final JsonGenerator out;

  private ResponseWriter(Questionnaire questionnaire, Answers effective, JsonGenerator out) {
    this.questionnaire = questionnaire;
    this.effective = effective;
    this.out = out;
  }

  /**
   * What a response says besides the answers.
   *
   * @param subject the pseudonym of the player
   * @param author who asked, in a word such as "volunteer"; never a name
   * @param authored when, as an ISO date and time with zone
   * @param stopped whether the interview was broken off for good
   */
  public record Header(String subject, String author, String authored, boolean stopped) {}

  /** The whole response, ending in a line break. */
  public static String write(Questionnaire questionnaire, Answers answers, Header header) {
    return PrettyJson.write(out -> write(questionnaire, answers, header, out));
  }

  /** Writes the response as one object at the place where {@code out} stands. */
  static void write(Questionnaire questionnaire, Answers answers, Header header, JsonGenerator out)
      throws IOException {
    Answers effective = Enablement.of(questionnaire, answers).effective();
    new ResponseWriter(questionnaire, effective, out).response(header);
  }

  /**
   * Whether every question that applies and must be answered is answered in a way that the response
   * can hold.
   */
  public static boolean isComplete(Questionnaire questionnaire, Answers answers) {
    Enablement enablement = Enablement.of(questionnaire, answers);
    for (Field field : questionnaire.fieldsByFact().values()) {
      boolean wanted = field.required() && enablement.applies(field.fact());
      if (wanted && !answers.answer(field.fact()).filter(a -> holds(field, a)).isPresent()) {
        return false;
      }
    }
    return true;
  }

  /** Whether a response can hold this answer; picking none without an option for it cannot be. */
  static boolean holds(Field field, Answer answer) {
    return !(answer instanceof Answer.Given given)
        || !(given.value() instanceof Value.Codes codes)
        || !codes.codes().isEmpty()
        || field.type().choices().stream().anyMatch(Option::exclusive);
  }

  private void response(Header header) throws IOException {
    boolean complete = isComplete(questionnaire, effective);
    out.writeStartObject();
    out.writeStringField("resourceType", "QuestionnaireResponse");
    out.writeStringField("questionnaire", questionnaire.url() + "|" + questionnaire.version());
    out.writeStringField(
        "status", header.stopped() ? "stopped" : complete ? "completed" : "in-progress");
    display("subject", header.subject());
    out.writeStringField("authored", header.authored());
    display("author", header.author());
    items(0, written());
    out.writeEndObject();
  }

  private void display(String name, String text) throws IOException {
    out.writeObjectFieldStart(name);
    out.writeStringField("display", text);
    out.writeEndObject();
  }

  private List<Field> written() {
    List<Field> fields = new ArrayList<>();
    for (Question question : questionnaire.questions()) {
      for (Field field : question.fields()) {
        Answers.Recorded recorded = effective.byFact().get(field.fact());
        if (recorded != null && holds(field, recorded.answer())) {
          fields.add(field);
        }
      }
    }
    return fields;
  }

  /** The items of these fields, which share the outer {@code depth} groups. */
  private void items(int depth, List<Field> fields) throws IOException {
    if (fields.isEmpty()) {
      return;
    }
    out.writeArrayFieldStart("item");
    int next = 0;
    while (next < fields.size()) {
      Field field = fields.get(next);
      if (field.groups().size() == depth) {
        item(field);
        next++;
      } else {
        int end = endOfGroup(depth, fields, next);
        group(field.groups().get(depth), depth + 1, fields.subList(next, end));
        next = end;
      }
    }
    out.writeEndArray();
  }

  private static int endOfGroup(int depth, List<Field> fields, int begin) {
    String group = fields.get(begin).groups().get(depth);
    int end = begin;
    while (end < fields.size()
        && fields.get(end).groups().size() > depth
        && fields.get(end).groups().get(depth).equals(group)) {
      end++;
    }
    return end;
  }

  private void group(String linkId, int depth, List<Field> fields) throws IOException {
    out.writeStartObject();
    out.writeStringField("linkId", linkId);
    String text = questionnaire.groupTexts().getOrDefault(linkId, "");
    if (!text.isEmpty()) {
      out.writeStringField("text", text);
    }
    items(depth, fields);
    out.writeEndObject();
  }

  private void item(Field field) throws IOException {
    Answers.Recorded recorded = effective.byFact().get(field.fact());
    if (recorded == null) {
      return;
    }
    out.writeStartObject();
    out.writeStringField("linkId", field.fact());
    out.writeArrayFieldStart("extension");
    extension(ResponseReader.ANSWERED_BY, "valueCode", recorded.provenance().by().code());
    extension(ResponseReader.HOW_KNOWN, "valueCode", recorded.provenance().how().code());
    if (!recorded.provenance().note().isBlank()) {
      extension(ResponseReader.NOTE, "valueString", PlainText.of(recorded.provenance().note()));
    }
    out.writeEndArray();
    out.writeArrayFieldStart("answer");
    if (recorded.answer() instanceof Answer.Given given) {
      value(field.type(), given.value());
    } else {
      absent(((Answer.Absent) recorded.answer()).reason());
    }
    out.writeEndArray();
    out.writeEndObject();
  }

  private void extension(String url, String member, String text) throws IOException {
    out.writeStartObject();
    out.writeStringField("url", url);
    out.writeStringField(member, text);
    out.writeEndObject();
  }

  private void absent(Answer.Reason reason) throws IOException {
    out.writeStartObject();
    out.writeArrayFieldStart("extension");
    extension(ResponseReader.ABSENT, "valueCode", code(reason));
    out.writeEndArray();
    out.writeEndObject();
  }

  /** The code for a missing value in HL7's code system data-absent-reason. */
  static String code(Answer.Reason reason) {
    return switch (reason) {
      case UNKNOWN -> "asked-unknown";
      case DECLINED -> "asked-declined";
      case NOT_APPLICABLE -> "not-applicable";
      case LATER -> "not-performed";
    };
  }

  private void value(FactType type, Value value) throws IOException {
    if (value instanceof Value.Codes codes) {
      List<String> picked = codes.codes().isEmpty() ? none(type) : codes.codes();
      for (String code : picked) {
        coding(type, code);
      }
    } else if (value instanceof Value.Code code) {
      coding(type, code.code());
    } else if (value instanceof Value.Texts texts) {
      for (String words : texts.words()) {
        single("valueString", words);
      }
    } else if (value instanceof Value.Text text) {
      single("valueString", text.words());
    } else {
      out.writeStartObject();
      if (value instanceof Value.Flag flag) {
        out.writeBooleanField("valueBoolean", flag.value());
      } else {
        number(type, ((Value.Number) value).value());
      }
      out.writeEndObject();
    }
  }

  private void number(FactType type, double value) throws IOException {
    boolean whole = type instanceof FactType.Amount amount && amount.decimals() == 0;
    out.writeFieldName(whole ? "valueInteger" : "valueDecimal");
    out.writeNumber(BigDecimal.valueOf(value).stripTrailingZeros().toPlainString());
  }

  private void single(String member, String text) throws IOException {
    out.writeStartObject();
    out.writeStringField(member, PlainText.of(text));
    out.writeEndObject();
  }

  private void coding(FactType type, String code) throws IOException {
    out.writeStartObject();
    out.writeObjectFieldStart("valueCoding");
    Option option = type.option(code).orElse(null);
    if (option != null) {
      out.writeStringField("system", option.system());
    }
    out.writeStringField("code", code);
    if (option != null) {
      out.writeStringField("display", option.display());
    }
    out.writeEndObject();
    out.writeEndObject();
  }

  private static List<String> none(FactType type) {
    return type.choices().stream().filter(Option::exclusive).map(Option::code).limit(1).toList();
  }
}
