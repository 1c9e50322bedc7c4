package closehand.strain;

import java.util.OptionalDouble;

/**
 * What the pauses of one person depend on.
 *
 * @param comfortableMinutes how long this person plays before wanting a rest, above 0, if known
 * @param wishedMinutes how long a good session is for this person, above 0, if known
 * @param reliefMinutes how often this person takes the weight off, above 0, where that applies
 * @param costsDays whether overdoing it costs days
 * @param settlesLate whether pain takes more than two hours to settle
 * @param tires whether this person tires within a session
 * @param painRises whether pain goes up in play
 * @param heavyHand whether the sum of a hand lies in the upper band of its method
 */
public record Pace(
    OptionalDouble comfortableMinutes,
    OptionalDouble wishedMinutes,
    OptionalDouble reliefMinutes,
    boolean costsDays,
    boolean settlesLate,
    boolean tires,
    boolean painRises,
    boolean heavyHand) {

  /** Nothing known, nothing special. */
  public static final Pace UNKNOWN =
      new Pace(
          OptionalDouble.empty(),
          OptionalDouble.empty(),
          OptionalDouble.empty(),
          false,
          false,
          false,
          false,
          false);

  /** The same with a comfortable time. */
  public Pace comfortable(double minutes) {
    return new Pace(
        OptionalDouble.of(minutes),
        wishedMinutes,
        reliefMinutes,
        costsDays,
        settlesLate,
        tires,
        painRises,
        heavyHand);
  }

  /** The same with the sum of a hand in the upper band, or not. */
  public Pace heavyHand(boolean heavy) {
    return new Pace(
        comfortableMinutes,
        wishedMinutes,
        reliefMinutes,
        costsDays,
        settlesLate,
        tires,
        painRises,
        heavy);
  }

  /** Whether pauses come twice as often. */
  boolean halved() {
    return heavyHand || painRises || settlesLate;
  }
}
