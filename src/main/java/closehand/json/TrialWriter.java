package closehand.json;

import closehand.measure.trial.Felt;
import closehand.measure.trial.SetUp;
import closehand.measure.trial.Trial;
import closehand.measure.trial.Tries;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.OptionalInt;

/** Writes a trial as one object of a case; what was not said is left out. */
public final class TrialWriter {
  static final String FORMAT = "closehand-trial";
  static final int VERSION = 1;

  private TrialWriter() {}

  /** The object. */
  public static JsonValue.Obj object(Trial trial) {
    String text = PrettyJson.write(out -> write(trial, out));
    return (JsonValue.Obj)
        JsonReader.read("trial", text.getBytes(StandardCharsets.UTF_8), new ArrayList<>())
            .orElseThrow(() -> new IllegalStateException("what was written can be read"));
  }

  private static void write(Trial trial, JsonGenerator out) throws IOException {
    out.writeStartObject();
    out.writeStringField("format", FORMAT);
    out.writeNumberField("version", VERSION);
    out.writeStringField("day", trial.day());
    out.writeBooleanField("done", trial.done());
    text("place", trial.place().where().map(Trial.Where::code).orElse(""), out);
    text("backOn", trial.place().backOn().orElse(""), out);
    setUp(trial.setUp(), out);
    text("game", trial.scene().game(), out);
    text("scene", trial.scene().part(), out);
    out.writeArrayFieldStart("actions");
    for (Tries tries : trial.actions()) {
      out.writeStartObject();
      out.writeStringField("action", tries.action());
      number("workedOfTen", tries.worked(), out);
      out.writeEndObject();
    }
    out.writeEndArray();
    felt("before", trial.before(), out);
    number("painAfterFiveMinutes", trial.painAfterFive(), out);
    felt("after", trial.after(), out);
    number("minutes", trial.minutes(), out);
    number("satisfaction", trial.satisfaction(), out);
    text("notes", trial.notes(), out);
    if (trial.stopped().isPresent()) {
      out.writeStringField("stopped", trial.stopped().get().code());
    }
    out.writeEndObject();
  }

  private static void setUp(SetUp setUp, JsonGenerator out) throws IOException {
    out.writeObjectFieldStart("setUp");
    text("name", setUp.name(), out);
    number("minutesToSetUp", setUp.minutesToSetUp(), out);
    text("cost", setUp.cost().map(SetUp.Cost::code).orElse(""), out);
    text("weight", setUp.weight().map(SetUp.Weight::code).orElse(""), out);
    out.writeEndObject();
  }

  private static void felt(String name, Felt felt, JsonGenerator out) throws IOException {
    out.writeObjectFieldStart(name);
    number("pain", felt.pain(), out);
    number("effort", felt.effort(), out);
    number("tiredness", felt.tiredness(), out);
    out.writeEndObject();
  }

  private static void number(String name, OptionalInt value, JsonGenerator out) throws IOException {
    if (value.isPresent()) {
      out.writeNumberField(name, value.getAsInt());
    }
  }

  private static void text(String name, String value, JsonGenerator out) throws IOException {
    if (!value.isEmpty()) {
      out.writeStringField(name, value);
    }
  }
}
