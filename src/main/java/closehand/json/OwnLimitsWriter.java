package closehand.json;

import closehand.strain.Accepted;
import closehand.strain.OwnLimits;
import java.util.Map;
import java.util.TreeMap;

/**
 * Writes what was said about a body that no question asks as one JSON object, for the room of plans
 * in a case.
 */
final class OwnLimitsWriter {
  static final String KIND = "load";
  private static final double TOP_RATING = 10;

  /** Ratings are kept without the last digits that multiplying leaves behind. */
  private static final double FINENESS = 1e9;

  private OwnLimitsWriter() {}

  /** The object, ending in a line break. */
  static String write(OwnLimits limits) {
    return PrettyJson.write(
        out -> {
          out.writeStartObject();
          out.writeStringField("kind", KIND);
          out.writeObjectFieldStart("effort");
          for (Map.Entry<String, Double> one : new TreeMap<>(limits.effort()).entrySet()) {
            double rating = Math.rint(one.getValue() * TOP_RATING * FINENESS) / FINENESS;
            out.writeNumberField(one.getKey(), rating);
          }
          out.writeEndObject();
          if (limits.reliefMinutes().isPresent()) {
            out.writeNumberField("reliefMinutes", limits.reliefMinutes().getAsDouble());
          }
          out.writeArrayFieldStart("accepted");
          for (Accepted one : limits.accepted()) {
            out.writeStartObject();
            out.writeStringField("part", one.effector());
            out.writeStringField("by", one.by());
            out.writeStringField("reason", one.reason());
            out.writeEndObject();
          }
          out.writeEndArray();
          out.writeEndObject();
        });
  }
}
