package closehand.json;

import closehand.measure.practice.PracticeRecord;
import closehand.measure.practice.Try;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.Map;

/** Writes a practice run as one JSON object, for the room of trials in a case. */
public final class PracticeWriter {
  static final String KIND = "practice";

  private PracticeWriter() {}

  /** The object, ending in a line break. */
  public static String write(PracticeRecord record) {
    return PrettyJson.write(out -> write(record, out));
  }

  private static void write(PracticeRecord record, JsonGenerator out) throws IOException {
    out.writeStartObject();
    out.writeStringField("kind", KIND);
    out.writeStringField("at", record.at());
    out.writeStringField("how", "measured");
    out.writeNumberField("game", record.game());
    out.writeNumberField("week", record.week());
    out.writeBooleanField("timed", record.timed());
    if (record.stop().isPresent()) {
      out.writeStringField("stopped", record.stop().get().code());
    }
    out.writeNumberField("timedSeconds", record.timedSeconds());
    out.writeObjectFieldStart("signals");
    for (var signal : record.signals().entrySet()) {
      out.writeStringField(signal.getKey(), signal.getValue().code());
    }
    out.writeEndObject();
    out.writeObjectFieldStart("taken");
    for (var change : record.taken().entrySet()) {
      out.writeStringField(change.getKey(), change.getValue());
    }
    out.writeEndObject();
    out.writeArrayFieldStart("tries");
    for (Try one : record.tries()) {
      write(one, out);
    }
    out.writeEndArray();
    out.writeEndObject();
  }

  private static void write(Try one, JsonGenerator out) throws IOException {
    out.writeStartObject();
    out.writeNumberField("round", one.round());
    out.writeStringField("action", one.action());
    out.writeStringField("input", one.input());
    out.writeBooleanField("hit", one.hit());
    if (one.millis().isPresent()) {
      out.writeNumberField("millis", one.millis().getAsLong());
    }
    if (one.wrong().isPresent()) {
      out.writeStringField("wrong", one.wrong().get());
    }
    Map<String, Boolean> marks =
        Map.of(
            "beside",
            one.beside(),
            "held",
            one.marks().held(),
            "bounced",
            one.marks().bounced(),
            "along",
            one.marks().along());
    for (String mark : marks.keySet().stream().sorted().toList()) {
      if (marks.getOrDefault(mark, false)) {
        out.writeBooleanField(mark, true);
      }
    }
    out.writeEndObject();
  }
}
