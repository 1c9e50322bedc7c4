package closehand.json;

import closehand.strain.Accepted;
import closehand.strain.EffectorReading;
import closehand.strain.HandReading;
import closehand.strain.Load;
import closehand.strain.LoadCaution;
import closehand.strain.PlanLoad;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.List;
import java.util.Locale;

/**
 * Writes what a plan asks of the body as the member {@code load}: each hand's composite strain
 * index, or why there is none; cautions with their figures; red parts that block the plan.
 */
final class LoadWriter {
  private static final double TENTHS = 10;

  private LoadWriter() {}

  static void write(JsonGenerator out, PlanLoad load, List<Accepted> accepted) throws IOException {
    out.writeObjectFieldStart("load");
    out.writeArrayFieldStart("hands");
    for (HandReading hand : load.hands()) {
      hand(out, hand);
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
    out.writeEndObject();
  }

  private static void hand(JsonGenerator out, HandReading hand) throws IOException {
    out.writeStartObject();
    out.writeStringField("id", hand.hand().name().toLowerCase(Locale.ROOT));
    out.writeStringField("method", hand.composite().method().title());
    if (hand.composite() instanceof Load.Figure figure) {
      out.writeNumberField("value", Math.round(TENTHS * figure.value()) / TENTHS);
      out.writeStringField("band", figure.band().name().toLowerCase(Locale.ROOT));
    } else {
      out.writeStringField("outside", hand.composite().flags().toString());
    }
    out.writeEndObject();
  }
}
