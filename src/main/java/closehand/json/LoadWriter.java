package closehand.json;

import closehand.strain.Accepted;
import closehand.strain.Band;
import closehand.strain.DayLoad;
import closehand.strain.Driver;
import closehand.strain.EffectorReading;
import closehand.strain.Flag;
import closehand.strain.HandReading;
import closehand.strain.Load;
import closehand.strain.LoadCaution;
import closehand.strain.Method;
import closehand.strain.PlanLoad;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.List;
import java.util.Locale;

/**
 * Writes what plans ask of the body: for each game the member {@code load} with every body part and
 * hand, cautions with their figures and red parts that block the plan; for the day its hands. Each
 * result has method, source, value, band, what drives it most and what to know beside it, or why
 * there is none.
 */
final class LoadWriter {
  private static final double TENTHS = 10;
  private static final double THOUSANDTHS = 1000;

  private final JsonGenerator out;

  LoadWriter(JsonGenerator out) {
    this.out = out;
  }

  /** What a player sees of a body part: green, amber or red; red too where it is asked too much. */
  static String light(EffectorReading part) {
    Band band = part.light().figure().map(Load.Figure::band).orElse(Band.UPPER);
    return switch (band) {
      case LOWER -> "green";
      case MIDDLE -> "amber";
      case UPPER -> "red";
    };
  }

  void write(PlanLoad load, List<Accepted> accepted) throws IOException {
    out.writeObjectFieldStart("load");
    out.writeArrayFieldStart("hands");
    for (HandReading hand : load.hands()) {
      out.writeStartObject();
      out.writeStringField("id", word(hand.hand()));
      figure(hand.composite());
      out.writeArrayFieldStart("activity");
      for (Load activity : hand.activity()) {
        result(activity);
      }
      out.writeEndArray();
      out.writeEndObject();
    }
    out.writeEndArray();
    out.writeArrayFieldStart("parts");
    for (EffectorReading part : load.effectors()) {
      part(part, load.time().hoursPerDay(), accepted);
    }
    out.writeEndArray();
    out.writeArrayFieldStart("cautions");
    for (LoadCaution caution : load.cautions()) {
      out.writeStartObject();
      out.writeStringField("code", caution.code());
      out.writeStringField("because", caution.because());
      out.writeEndObject();
    }
    out.writeEndArray();
    out.writeArrayFieldStart("blockedBy");
    for (EffectorReading part : load.blocking(accepted)) {
      out.writeString(part.effector());
    }
    out.writeEndArray();
    flags(load.flags());
    out.writeEndObject();
  }

  /** The hands over all games of a day. */
  void day(DayLoad day) throws IOException {
    out.writeObjectFieldStart("day");
    out.writeArrayFieldStart("hands");
    for (var hand : day.hands().entrySet()) {
      out.writeStartObject();
      out.writeStringField("id", word(hand.getKey()));
      figure(hand.getValue());
      out.writeEndObject();
    }
    out.writeEndArray();
    out.writeEndObject();
  }

  private void part(EffectorReading part, double hours, List<Accepted> accepted)
      throws IOException {
    out.writeStartObject();
    out.writeStringField("id", part.effector());
    for (Accepted one : accepted) {
      if (one.effector().equals(part.effector()) && part.isRed()) {
        out.writeStringField("acceptedBy", one.by());
        out.writeStringField("reason", one.reason());
      }
    }
    out.writeArrayFieldStart("results");
    for (Load load : List.of(part.light(), part.index(), part.secondLook(hours), part.hold())) {
      if (!load.flags().contains(Flag.NOT_A_HAND) && !load.flags().contains(Flag.NOTHING_TO_DO)) {
        result(load);
      }
    }
    out.writeEndArray();
    out.writeEndObject();
  }

  private void result(Load load) throws IOException {
    out.writeStartObject();
    figure(load);
    out.writeEndObject();
  }

  private void figure(Load load) throws IOException {
    Method method = load.method();
    out.writeStringField("method", method.title());
    out.writeStringField("source", method.source());
    if (load instanceof Load.Figure figure) {
      boolean share = method == Method.ENDURANCE || method == Method.LOAD_LIGHT;
      double fineness = share ? THOUSANDTHS : TENTHS;
      out.writeNumberField("value", Math.round(fineness * figure.value()) / fineness);
      out.writeStringField("band", word(figure.band()));
      out.writeArrayFieldStart("drivers");
      for (Driver driver : figure.drivers()) {
        out.writeStartObject();
        if (!driver.effector().isEmpty()) {
          out.writeStringField("part", driver.effector());
        }
        out.writeStringField("factor", word(driver.factor()));
        out.writeEndObject();
      }
      out.writeEndArray();
    } else {
      out.writeBooleanField("outside", true);
    }
    flags(load.flags());
  }

  private void flags(List<Flag> flags) throws IOException {
    out.writeArrayFieldStart("flags");
    for (Flag flag : flags) {
      out.writeString(word(flag));
    }
    out.writeEndArray();
  }

  private static String word(Enum<?> one) {
    return one.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }
}
