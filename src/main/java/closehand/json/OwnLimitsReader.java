package closehand.json;

import closehand.bank.Problem;
import closehand.strain.OwnLimits;
import java.util.List;
import java.util.Optional;

/**
 * Reads the member {@code load} of a flat answers file: {@code "effort"} with a rating of 0 to 10
 * by body part, and {@code "reliefMinutes"}. No question asks for either.
 */
public final class OwnLimitsReader {
  private static final String LOAD = "load";

  private OwnLimitsReader() {}

  /** The document without it. */
  public static JsonValue rest(JsonValue document) {
    return document instanceof JsonValue.Obj object ? object.without(LOAD) : document;
  }

  /** What the document says; nothing where it says nothing. */
  public static OwnLimits read(JsonValue document, List<Problem> problems) {
    Optional<ObjectReading> in =
        document instanceof JsonValue.Obj object
            ? object.member(LOAD).flatMap(v -> ObjectReading.of(v, problems))
            : Optional.empty();
    if (in.isEmpty()) {
      return OwnLimits.NONE;
    }
    OwnLimits limits = OwnLimits.NONE;
    Optional<ObjectReading> effort =
        in.get().optional("effort").flatMap(v -> ObjectReading.of(v, problems));
    if (effort.isPresent()) {
      for (String part : effort.get().names()) {
        limits = limits.rated(effort.get().where(part), part, number(effort.get(), part), problems);
      }
    }
    if (in.get().optional("reliefMinutes").isPresent()) {
      limits =
          limits.relieving(
              in.get().where("reliefMinutes"), number(in.get(), "reliefMinutes"), problems);
    }
    in.get().finish();
    return limits;
  }

  private static double number(ObjectReading in, String name) {
    return in.optional(name).orElse(null) instanceof JsonValue.Num number
        ? number.value()
        : Double.NaN;
  }
}
