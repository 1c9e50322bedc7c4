package closehand.json;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;

/** Writes values that were read, unchanged in meaning. */
final class JsonTree {
  private JsonTree() {}

  static void write(JsonValue value, JsonGenerator out) throws IOException {
    if (value instanceof JsonValue.Obj object) {
      out.writeStartObject();
      for (JsonValue.Member member : object.members()) {
        out.writeFieldName(member.name());
        write(member.value(), out);
      }
      out.writeEndObject();
    } else if (value instanceof JsonValue.Arr list) {
      out.writeStartArray();
      for (JsonValue item : list.items()) {
        write(item, out);
      }
      out.writeEndArray();
    } else if (value instanceof JsonValue.Str text) {
      out.writeString(text.value());
    } else if (value instanceof JsonValue.Num number) {
      out.writeNumber(number.text());
    } else if (value instanceof JsonValue.Bool truth) {
      out.writeBoolean(truth.value());
    } else {
      out.writeNull();
    }
  }
}
