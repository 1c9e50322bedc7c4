package closehand.json;

import closehand.interview.Answer;
import closehand.interview.CaseRecord;
import closehand.interview.Consent;
import closehand.interview.Event;
import closehand.interview.Measured;
import closehand.interview.PlainText;
import closehand.interview.Suggested;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
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
    out.writeArrayFieldStart("measured");
    for (Measured measured : record.measured()) {
      MeasuredWriter.write(measured, out);
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
    ValueWriter.answer(answer.get(), out);
  }

  private void suggested(Suggested one) throws IOException {
    out.writeStartObject();
    out.writeStringField("at", one.at());
    out.writeStringField("bankVersion", one.bankVersion());
    out.writeStringField("fingerprint", one.fingerprint());
    out.writeBooleanField("withheld", one.withheld());
    out.writeFieldName("stops");
    ValueWriter.texts(one.stops(), out);
    out.writeFieldName("cautions");
    ValueWriter.texts(one.cautions(), out);
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
}
