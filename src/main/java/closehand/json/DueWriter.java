package closehand.json;

import closehand.measure.followup.DueCase;
import java.util.List;

/** Writes what is due as one JSON object for other programs. */
public final class DueWriter {
  private DueWriter() {}

  /** The whole object, ending in a line break. */
  public static String write(String by, List<DueCase> due, List<String> sealed) {
    return PrettyJson.write(
        out -> {
          out.writeStartObject();
          out.writeStringField("by", by);
          out.writeArrayFieldStart("due");
          for (DueCase one : due) {
            out.writeStartObject();
            out.writeStringField("case", one.name());
            out.writeStringField("on", one.due().on().iso());
            out.writeStringField("what", one.due().what().code());
            out.writeEndObject();
          }
          out.writeEndArray();
          out.writeArrayFieldStart("sealed");
          for (String name : sealed) {
            out.writeString(name);
          }
          out.writeEndArray();
          out.writeEndObject();
        });
  }
}
