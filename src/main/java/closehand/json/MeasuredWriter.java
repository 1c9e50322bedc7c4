package closehand.json;

import closehand.interview.Measured;
import closehand.interview.Value;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.Map;

/** Writes a measured task as a case keeps it. */
final class MeasuredWriter {
  private MeasuredWriter() {}

  static void write(Measured one, JsonGenerator out) throws IOException {
    out.writeStartObject();
    out.writeStringField("at", one.at());
    out.writeStringField("task", one.task());
    if (!one.place().isEmpty()) {
      out.writeStringField("place", one.place());
    }
    out.writeStringField("by", one.by().code());
    Measured.Circumstances circumstances = one.circumstances();
    out.writeStringField("setting", circumstances.setting());
    out.writeStringField("posture", circumstances.posture());
    out.writeStringField("support", circumstances.support());
    out.writeStringField("partOfDay", circumstances.partOfDay());
    out.writeNumberField("minutesIn", circumstances.minutesIn());
    out.writeBooleanField("keys", one.keys());
    out.writeArrayFieldStart("goes");
    for (Measured.Go go : one.goes()) {
      go(go, out);
    }
    out.writeEndArray();
    out.writeNumberField("timedSeconds", one.timedSeconds());
    out.writeStringField("ending", one.ending().code());
    if (!one.stop().isEmpty()) {
      out.writeStringField("stop", one.stop());
    }
    out.writeFieldName("facts");
    ValueWriter.texts(one.facts(), out);
    out.writeEndObject();
  }

  private static void go(Measured.Go go, JsonGenerator out) throws IOException {
    out.writeStartObject();
    out.writeBooleanField("practice", go.practice());
    if (!go.discarded().isEmpty()) {
      out.writeStringField("discarded", go.discarded());
    }
    out.writeObjectFieldStart("values");
    for (Map.Entry<String, Value> value : go.values().entrySet()) {
      out.writeFieldName(value.getKey());
      ValueWriter.value(value.getValue(), out);
    }
    out.writeEndObject();
    out.writeEndObject();
  }
}
