package closehand.json;

import closehand.rules.proof.Move;
import closehand.rules.proof.Standpoint;
import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.Closeable;
import java.io.IOException;
import java.io.OutputStream;
import java.util.List;
import java.util.Set;

/** Writes how cases move from one bank to another as they come, so that none is kept. */
public final class MoveWriter implements Closeable {
  private final JsonGenerator out;

  /** Begins the document. */
  public MoveWriter(OutputStream stream) throws IOException {
    out = new JsonFactory().createGenerator(stream);
    out.disable(JsonGenerator.Feature.AUTO_CLOSE_TARGET);
    out.useDefaultPrettyPrinter();
    out.writeStartObject();
    out.writeArrayFieldStart("moved");
  }

  /** One case that moved. */
  public void write(String name, Move move) throws IOException {
    out.writeStartObject();
    out.writeStringField("case", name);
    texts("in", move.in().stream().map(WhyWriter::word).toList());
    standpoint("before", move.before());
    standpoint("after", move.after());
    texts("byRules", move.byRules());
    out.writeBooleanField("byTies", move.byTies());
    out.writeEndObject();
  }

  private void standpoint(String name, Standpoint standpoint) throws IOException {
    out.writeObjectFieldStart(name);
    out.writeFieldName("leader");
    if (standpoint.verdict().leader().isPresent()) {
      out.writeString(standpoint.verdict().leader().get());
    } else {
      out.writeNull();
    }
    out.writeBooleanField("firm", standpoint.verdict().firm());
    out.writeBooleanField("withheld", standpoint.verdict().withheld());
    texts("suggested", standpoint.suggested());
    texts("ruledOut", standpoint.ruledOut());
    texts("cautions", standpoint.cautions());
    texts("stops", standpoint.stops());
    out.writeEndObject();
  }

  private void texts(String name, List<String> values) throws IOException {
    WhyWriter.texts(name, values, out);
  }

  private void texts(String name, Set<String> values) throws IOException {
    texts(name, List.copyOf(values));
  }

  /** Ends the document with what was counted. */
  public void end(int cases, int moved, List<String> skipped) throws IOException {
    out.writeEndArray();
    out.writeNumberField("cases", cases);
    out.writeNumberField("movedCases", moved);
    texts("skipped", skipped);
    out.writeEndObject();
    out.writeRaw('\n');
  }

  @Override
  public void close() throws IOException {
    out.close();
  }
}
