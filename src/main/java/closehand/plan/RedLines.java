package closehand.plan;

import closehand.plan.supply.BodyPart;
import closehand.plan.supply.Supply;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

/** Takes away the red lines of parts of the body for which a clinician accepts more. */
final class RedLines {
  /** Ten presses a second: above anything a game asks. */
  private static final int ANY_PRESSES_TENTHS = 6_000;

  private static final int WHOLE_MINUTE_MILLIS = 60_000;

  private RedLines() {}

  /** The same supply with nothing but the minute as the limit of these parts. */
  static Supply lifted(Supply supply, Set<String> parts) {
    if (parts.isEmpty()) {
      return supply;
    }
    Map<String, BodyPart> body = new TreeMap<>();
    supply.body().forEach((id, part) -> body.put(id, parts.contains(id) ? lifted(part) : part));
    return new Supply(
        supply.devices(),
        supply.inputs(),
        body,
        supply.coupled(),
        supply.exclusive(),
        supply.layers(),
        supply.halfParts(),
        supply.factors(),
        supply.textBy(),
        supply.waitsFor(),
        supply.measured());
  }

  private static BodyPart lifted(BodyPart part) {
    return new BodyPart(
        part.id(),
        Math.max(ANY_PRESSES_TENTHS, part.mostPressesTenths()),
        part.greenPressesTenths(),
        Math.max(WHOLE_MINUTE_MILLIS, part.mostHeldMillis()),
        part.greenHeldMillis(),
        part.longestHoldMillis(),
        part.pressMillis(),
        part.reliabilityPerMille(),
        part.firm());
  }
}
