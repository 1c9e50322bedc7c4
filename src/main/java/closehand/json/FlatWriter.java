package closehand.json;

import closehand.interview.Answers;
import java.util.Map;

/** Writes answers in the flat form that every command with {@code --answers} reads. */
public final class FlatWriter {
  private FlatWriter() {}

  /** One object, fact id to value; who answered, notes and lowered stops have no place in it. */
  public static String write(Answers answers) {
    return PrettyJson.write(
        out -> {
          out.writeStartObject();
          for (Map.Entry<String, Answers.Recorded> entry : answers.byFact().entrySet()) {
            out.writeFieldName(entry.getKey());
            ValueWriter.answer(entry.getValue().answer(), out);
          }
          out.writeEndObject();
        });
  }
}
