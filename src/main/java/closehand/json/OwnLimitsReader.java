package closehand.json;

import closehand.bank.Problem;
import closehand.strain.Accepted;
import closehand.strain.OwnLimits;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Reads the member {@code load} of a flat answers file: {@code "effort"} with a rating of 0 to 10
 * by body part, and {@code "reliefMinutes"}. No question asks for either. A case keeps the same,
 * and what a clinician accepted, which no answers file can say.
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
    OwnLimits limits = in.map(i -> said(i, problems)).orElse(OwnLimits.NONE);
    in.ifPresent(ObjectReading::finish);
    return limits;
  }

  /**
   * What a case keeps in its room of plans: the same, and what a clinician accepted; nothing where
   * there is nothing, or where it cannot be read.
   */
  static OwnLimits kept(List<JsonValue.Obj> plans) {
    OwnLimits limits = OwnLimits.NONE;
    for (JsonValue.Obj plan : plans) {
      if (isKept(plan)) {
        List<Problem> problems = new ArrayList<>();
        ObjectReading in = new ObjectReading(plan, problems);
        OwnLimits read = said(in, problems);
        for (JsonValue value : in.list("accepted")) {
          Optional<ObjectReading> one = ObjectReading.of(value, problems);
          Optional<Accepted> accepted =
              one.flatMap(
                  a ->
                      Accepted.of(
                          a.where(), a.text("part"), a.text("by"), a.text("reason"), problems));
          read = accepted.map(read::accepting).orElse(read);
        }
        limits = Problem.anyError(problems) ? limits : read;
      }
    }
    return limits;
  }

  /** Whether an object in the room of plans holds what was said about the body, and no plan. */
  static boolean isKept(JsonValue.Obj plan) {
    return plan.member("kind").orElse(null) instanceof JsonValue.Str kind
        && kind.value().equals(OwnLimitsWriter.KIND);
  }

  private static OwnLimits said(ObjectReading in, List<Problem> problems) {
    OwnLimits limits = OwnLimits.NONE;
    Optional<ObjectReading> effort =
        in.optional("effort").flatMap(v -> ObjectReading.of(v, problems));
    if (effort.isPresent()) {
      for (String part : effort.get().names()) {
        limits = limits.rated(effort.get().where(part), part, number(effort.get(), part), problems);
      }
    }
    if (in.optional("reliefMinutes").isPresent()) {
      limits = limits.relieving(in.where("reliefMinutes"), number(in, "reliefMinutes"), problems);
    }
    return limits;
  }

  private static double number(ObjectReading in, String name) {
    return in.optional(name).orElse(null) instanceof JsonValue.Num number
        ? number.value()
        : Double.NaN;
  }
}
