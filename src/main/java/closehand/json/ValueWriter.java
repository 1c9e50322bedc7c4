package closehand.json;

import closehand.interview.Answer;
import closehand.interview.PlainText;
import closehand.interview.Value;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.math.BigDecimal;
import java.util.List;

/** Writes answers as the project's own formats have them: bare values, or why there is none. */
final class ValueWriter {
  private ValueWriter() {}

  /** A bare value, or an object that says why there is none. */
  static void answer(Answer answer, JsonGenerator out) throws IOException {
    if (answer instanceof Answer.Given given) {
      value(given.value(), out);
    } else {
      out.writeStartObject();
      out.writeStringField("absent", ((Answer.Absent) answer).reason().code());
      out.writeEndObject();
    }
  }

  static void value(Value value, JsonGenerator out) throws IOException {
    if (value instanceof Value.Flag flag) {
      out.writeBoolean(flag.value());
    } else if (value instanceof Value.Number number) {
      out.writeNumber(BigDecimal.valueOf(number.value()).stripTrailingZeros().toPlainString());
    } else if (value instanceof Value.Code code) {
      out.writeString(code.code());
    } else if (value instanceof Value.Text text) {
      out.writeString(PlainText.of(text.words()));
    } else {
      texts(
          value instanceof Value.Codes codes ? codes.codes() : ((Value.Texts) value).words(), out);
    }
  }

  static void texts(List<String> words, JsonGenerator out) throws IOException {
    out.writeStartArray();
    for (String word : words) {
      out.writeString(PlainText.of(word));
    }
    out.writeEndArray();
  }
}
