package closehand.json;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import java.io.IOException;
import java.io.StringWriter;

/** Writes a JSON document that a person can read: indented, the same on every system. */
final class PrettyJson {
  private static final JsonFactory FACTORY = new JsonFactory();

  private PrettyJson() {}

  /** What goes into a document. */
  @FunctionalInterface
  interface Content {
    void writeTo(JsonGenerator out) throws IOException;
  }

  /** The document as text, ending in a line break. */
  static String write(Content content) {
    StringWriter text = new StringWriter();
    DefaultPrettyPrinter printer = new DefaultPrettyPrinter();
    printer.indentObjectsWith(new DefaultIndenter(" ", "\n"));
    try (JsonGenerator out = FACTORY.createGenerator(text)) {
      out.setPrettyPrinter(printer);
      content.writeTo(out);
    } catch (IOException e) {
      throw new IllegalStateException("writing to memory cannot fail", e);
    }
    return text.append('\n').toString();
  }
}
