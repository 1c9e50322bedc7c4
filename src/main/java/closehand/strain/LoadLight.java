package closehand.strain;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/**
 * Presses and holds of one body part beside what it can do: a practice estimate, no source.
 *
 * <p>Lower: at most 30 presses a minute and 20 % of its own fastest tapping, held at most 25 % of
 * the time. Upper: over 60 a minute, over 50 % of its tapping, or held over 50 %.
 */
public final class LoadLight {
  static final double AMBER_PER_MINUTE = 30;
  private static final double RED_PER_MINUTE = 60;
  static final double AMBER_TAPPING = 0.20;
  private static final double RED_TAPPING = 0.50;
  private static final double AMBER_HELD = 0.25;
  private static final double RED_HELD = 0.50;
  private static final double TENS_OF_SECONDS = 6;

  private LoadLight() {}

  /**
   * What a light was worked out from.
   *
   * @param perMinute presses a minute, all kinds together
   * @param heldShare share of the time held, 0 to 1
   * @param tappingShare presses beside the fastest tapping, where that is known
   * @param band the heaviest of the three
   * @param repeats whether presses put it above the lower band
   * @param holds whether holding puts it above the lower band
   */
  public record Reading(
      double perMinute,
      double heldShare,
      OptionalDouble tappingShare,
      Band band,
      boolean repeats,
      boolean holds) {}

  /** The reading for presses of one body part that are all holds. */
  public static Reading reading(List<Exertion> ofOnePart, OptionalDouble tapsInTenSeconds) {
    return reading(ofOnePart, ofOnePart, tapsInTenSeconds);
  }

  /**
   * The reading for all presses of one body part.
   *
   * @param ofOnePart all of the same body part
   * @param holds those among them that are held
   * @param tapsInTenSeconds its fastest tapping, where measured, above 0
   */
  public static Reading reading(
      List<Exertion> ofOnePart, List<Exertion> holds, OptionalDouble tapsInTenSeconds) {
    double perMinute = Sums.of(ofOnePart, Exertion::perMinute);
    double held = Sums.of(holds, Exertion::secondsPerMinute) / Exertion.MINUTE;
    OptionalDouble tapping =
        tapsInTenSeconds.isPresent()
            ? OptionalDouble.of(perMinute / (tapsInTenSeconds.getAsDouble() * TENS_OF_SECONDS))
            : OptionalDouble.empty();
    Band repeats =
        Band.of(perMinute, AMBER_PER_MINUTE, RED_PER_MINUTE)
            .orHeavier(Band.of(tapping.orElse(0), AMBER_TAPPING, RED_TAPPING));
    Band holding = Band.of(held, AMBER_HELD, RED_HELD);
    return new Reading(
        perMinute,
        held,
        tapping,
        repeats.orHeavier(holding),
        repeats != Band.LOWER,
        holding != Band.LOWER);
  }

  /** The figure: how far the heaviest of the three is towards its upper line, 1 at the line. */
  public static Load of(List<Exertion> ofOnePart, OptionalDouble tapsInTenSeconds) {
    if (ofOnePart.isEmpty()) {
      return Load.outside(Method.LOAD_LIGHT, Flag.NOTHING_TO_DO);
    }
    if (OneMinute.isImpossible(ofOnePart)) {
      return Load.outside(Method.LOAD_LIGHT, Flag.MORE_THAN_A_MINUTE);
    }
    return of(reading(ofOnePart, tapsInTenSeconds));
  }

  /** The figure of a reading that can be. */
  static Load of(Reading reading) {
    List<Driver> drivers = new ArrayList<>();
    drivers.add(new Driver("", Factor.FREQUENCY, reading.perMinute() / RED_PER_MINUTE));
    drivers.add(new Driver("", Factor.HELD_SHARE, reading.heldShare() / RED_HELD));
    if (reading.tappingShare().isPresent()) {
      double tapping = reading.tappingShare().getAsDouble();
      drivers.add(new Driver("", Factor.TAP_SHARE, tapping / RED_TAPPING));
    }
    return new Load.Figure(
        Method.LOAD_LIGHT,
        drivers.stream().mapToDouble(Driver::times).max().orElse(0),
        reading.band(),
        Driver.biggest(drivers),
        reading.tappingShare().isPresent() ? List.of() : List.of(Flag.TAPPING_NOT_MEASURED));
  }
}
