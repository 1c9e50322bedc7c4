package closehand.json;

import closehand.measure.practice.PointingFindings;
import closehand.measure.practice.PointingTask;
import closehand.measure.statistics.Throughput;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;

/** Writes what pointing told as one JSON object, for the room of trials in a case. */
public final class PointingWriter {
  static final String KIND = "pointing";

  private static final double THOUSAND = 1_000;

  private PointingWriter() {}

  /**
   * The object, ending in a line break.
   *
   * @param at when, as an ISO date and time with zone
   */
  public static String write(String at, PointingTask task, PointingFindings found) {
    return PrettyJson.write(
        out -> {
          out.writeStartObject();
          out.writeStringField("kind", KIND);
          out.writeStringField("at", at);
          out.writeStringField("how", "measured");
          out.writeStringField("resolution", "one character cell");
          out.writeNumberField("columns", task.columns());
          out.writeNumberField("timedSeconds", task.timedSeconds());
          if (task.stop().isPresent()) {
            out.writeStringField("stopped", task.stop().get().code());
          }
          out.writeArrayFieldStart("ways");
          for (PointingFindings.OfWay way : found.ways()) {
            way(way, out);
          }
          out.writeEndArray();
          out.writeEndObject();
        });
  }

  private static void way(PointingFindings.OfWay way, JsonGenerator out) throws IOException {
    out.writeStartObject();
    out.writeStringField("name", way.name());
    out.writeNumberField("selections", way.selections());
    out.writeNumberField("missed", way.missed());
    out.writeBooleanField("tooFine", way.tooFine());
    out.writeArrayFieldStart("bitsPerSecond");
    for (Throughput part : way.parts()) {
      out.writeNumber(Math.round(part.bitsPerSecond() * THOUSAND) / THOUSAND);
    }
    out.writeEndArray();
    out.writeEndObject();
  }
}
