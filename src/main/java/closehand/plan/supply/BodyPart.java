package closehand.plan.supply;

import java.util.OptionalInt;

/**
 * A part of the body that can work inputs, and how much of it is wise.
 *
 * @param id such as {@code L.T}
 * @param mostPressesTenths tenths of a press a minute that no plan may go above
 * @param greenPressesTenths up to here the load light is green
 * @param mostHeldMillis milliseconds held a minute that no plan may go above
 * @param greenHeldMillis up to here the light is green
 * @param longestHoldMillis one hold may not last longer, where that is known
 * @param pressMillis from wish to press
 * @param reliabilityPerMille presses of a thousand that come off
 * @param firm whether what it rests on was seen or measured
 */
public record BodyPart(
    String id,
    int mostPressesTenths,
    int greenPressesTenths,
    int mostHeldMillis,
    int greenHeldMillis,
    OptionalInt longestHoldMillis,
    int pressMillis,
    int reliabilityPerMille,
    boolean firm) {}
