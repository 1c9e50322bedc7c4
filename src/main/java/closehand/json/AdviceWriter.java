package closehand.json;

import closehand.rules.Advice;
import closehand.rules.Finding;
import closehand.rules.Standing;
import closehand.rules.Warning;
import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import java.io.IOException;
import java.io.StringWriter;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * Writes advice as one JSON object for other programs. The members {@code suggestions}, {@code
 * excluded}, {@code undecided}, {@code cautions}, {@code stops}, {@code notCleared}, {@code
 * withheld} and {@code firm} are fixed; others may be added.
 */
public final class AdviceWriter {
  private static final JsonFactory FACTORY = new JsonFactory();

  private final JsonGenerator out;

  private AdviceWriter(JsonGenerator out) {
    this.out = out;
  }

  /**
   * The whole object, ending in a line break.
   *
   * @param together advice for all wanted games together
   * @param byGame advice for each game slot alone; may be empty
   */
  public static String write(Advice together, Map<Integer, Advice> byGame) {
    StringWriter text = new StringWriter();
    DefaultPrettyPrinter printer = new DefaultPrettyPrinter();
    printer.indentObjectsWith(new DefaultIndenter("  ", "\n"));
    try (JsonGenerator out = FACTORY.createGenerator(text)) {
      out.setPrettyPrinter(printer);
      AdviceWriter writer = new AdviceWriter(out);
      out.writeStartObject();
      writer.advice(together);
      if (byGame.size() > 1) {
        writer.games(byGame);
      }
      out.writeEndObject();
    } catch (IOException e) {
      throw new IllegalStateException("writing to memory cannot fail", e);
    }
    return text.append('\n').toString();
  }

  private void games(Map<Integer, Advice> byGame) throws IOException {
    out.writeArrayFieldStart("byGame");
    for (Map.Entry<Integer, Advice> entry : new TreeMap<>(byGame).entrySet()) {
      out.writeStartObject();
      out.writeNumberField("game", entry.getKey() - 1);
      advice(entry.getValue());
      out.writeEndObject();
    }
    out.writeEndArray();
  }

  private void advice(Advice advice) throws IOException {
    out.writeArrayFieldStart("suggestions");
    for (Standing standing : advice.suggestions()) {
      suggestion(standing);
    }
    out.writeEndArray();
    out.writeArrayFieldStart("excluded");
    for (Standing standing : advice.with(Standing.Status.RULED_OUT)) {
      out.writeStartObject();
      out.writeStringField("approach", standing.approach().id());
      texts("because", ids(standing.ruledOutBy()));
      out.writeEndObject();
    }
    out.writeEndArray();
    out.writeArrayFieldStart("undecided");
    for (Standing standing : advice.with(Standing.Status.UNDECIDED)) {
      out.writeStartObject();
      out.writeStringField("approach", standing.approach().id());
      points(standing);
      texts("waitsFor", standing.waitsFor());
      out.writeEndObject();
    }
    out.writeEndArray();
    warnings("cautions", advice.cautions(), false);
    warnings("stops", advice.stops(), false);
    warnings("notCleared", advice.notCleared(), true);
    warnings("lowered", advice.lowered(), false);
    out.writeBooleanField("withheld", advice.withheld());
    out.writeBooleanField("forReview", advice.forReview());
    out.writeBooleanField("firm", advice.firm());
  }

  private void suggestion(Standing standing) throws IOException {
    out.writeStartObject();
    out.writeStringField("approach", standing.approach().id());
    points(standing);
    out.writeStringField(
        "strength", standing.status() == Standing.Status.STRONG ? "strong" : "worth-trying");
    texts("because", ids(standing.inFavour()));
    texts("against", ids(standing.against()));
    texts("waitsFor", standing.waitsFor());
    out.writeEndObject();
  }

  private void points(Standing standing) throws IOException {
    out.writeFieldName("points");
    out.writeArray(new int[] {standing.lowest(), standing.highest()}, 0, 2);
  }

  private void warnings(String name, List<Warning> warnings, boolean open) throws IOException {
    out.writeArrayFieldStart(name);
    for (Warning warning : warnings) {
      out.writeStartObject();
      out.writeStringField("code", warning.caution().code());
      out.writeStringField("class", warning.cautionClass().code());
      texts("because", ids(warning.because()));
      if (open) {
        texts("waitsFor", warning.waitsFor());
      }
      out.writeEndObject();
    }
    out.writeEndArray();
  }

  private void texts(String name, List<String> values) throws IOException {
    out.writeFieldName(name);
    out.writeArray(values.toArray(new String[0]), 0, values.size());
  }

  private static List<String> ids(List<Finding> findings) {
    return findings.stream().map(f -> f.rule().id()).distinct().toList();
  }
}
