package closehand.json;

import closehand.interview.Answer;
import closehand.interview.CaseRecord;
import closehand.interview.Consent;
import closehand.interview.Event;
import closehand.interview.PlainText;
import closehand.interview.Suggested;
import closehand.interview.Value;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;

/** Writes what is kept of a case besides its answers. */
final class RecordWriter {
  private final JsonGenerator out;

  RecordWriter(JsonGenerator out) {
    this.out = out;
  }

  void write(CaseRecord record) throws IOException {
    optional("keepUntil", record.keepUntil());
    optional("reviewOn", record.reviewOn());
    out.writeArrayFieldStart("consents");
    for (Consent consent : record.consents()) {
      consent(consent);
    }
    out.writeEndArray();
    out.writeArrayFieldStart("history");
    for (Event event : record.history()) {
      event(event);
    }
    out.writeEndArray();
    out.writeArrayFieldStart("suggested");
    for (Suggested suggested : record.suggested()) {
      suggested(suggested);
    }
    out.writeEndArray();
  }

  private void optional(String name, Optional<String> text) throws IOException {
    if (text.isPresent()) {
      out.writeStringField(name, text.get());
    }
  }

  private void consent(Consent consent) throws IOException {
    out.writeStartObject();
    out.writeStringField("fact", consent.fact());
    answer("answer", Optional.of(consent.answer()));
    out.writeStringField("by", consent.by().code());
    out.writeStringField("at", consent.at());
    out.writeEndObject();
  }

  private void event(Event event) throws IOException {
    out.writeStartObject();
    out.writeStringField("at", event.at());
    out.writeNumberField("elapsedSeconds", event.elapsedSeconds());
    out.writeStringField("what", event.what().code());
    if (!event.subject().isEmpty()) {
      out.writeStringField("subject", event.subject());
    }
    answer("from", event.from());
    answer("to", event.to());
    out.writeStringField("by", PlainText.of(event.by()));
    if (!event.why().isBlank()) {
      out.writeStringField("why", PlainText.of(event.why()));
    }
    out.writeEndObject();
  }

  private void answer(String name, Optional<Answer> answer) throws IOException {
    if (answer.isEmpty()) {
      return;
    }
    out.writeFieldName(name);
    if (answer.get() instanceof Answer.Given given) {
      value(given.value());
    } else {
      out.writeStartObject();
      out.writeStringField("absent", ((Answer.Absent) answer.get()).reason().code());
      out.writeEndObject();
    }
  }

  private void value(Value value) throws IOException {
    if (value instanceof Value.Flag flag) {
      out.writeBoolean(flag.value());
    } else if (value instanceof Value.Number number) {
      out.writeNumber(BigDecimal.valueOf(number.value()).stripTrailingZeros().toPlainString());
    } else if (value instanceof Value.Texts texts) {
      texts(texts.words());
    } else if (value instanceof Value.Text text) {
      out.writeString(PlainText.of(text.words()));
    } else {
      throw new IllegalArgumentException("no answer as in files");
    }
  }

  private void suggested(Suggested one) throws IOException {
    out.writeStartObject();
    out.writeStringField("at", one.at());
    out.writeStringField("bankVersion", one.bankVersion());
    out.writeStringField("fingerprint", one.fingerprint());
    out.writeBooleanField("withheld", one.withheld());
    out.writeFieldName("stops");
    texts(one.stops());
    out.writeFieldName("cautions");
    texts(one.cautions());
    out.writeArrayFieldStart("ideas");
    for (Suggested.Idea idea : one.ideas()) {
      out.writeStartObject();
      out.writeStringField("id", idea.id());
      out.writeStringField("title", idea.title());
      out.writeNumberField("points", idea.points());
      out.writeEndObject();
    }
    out.writeEndArray();
    out.writeEndObject();
  }

  private void texts(List<String> words) throws IOException {
    out.writeStartArray();
    for (String word : words) {
      out.writeString(PlainText.of(word));
    }
    out.writeEndArray();
  }
}
