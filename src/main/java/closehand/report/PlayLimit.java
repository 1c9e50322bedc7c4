package closehand.report;

import closehand.interview.Wording;
import closehand.rules.Warning;
import java.util.OptionalDouble;

/**
 * The one limit on a block of play: the shortest that answers and cautions ask for.
 *
 * @param comfortable minutes the player can play before a rest, where known
 * @param minutes the limit, in whole minutes, where known; at least 1
 * @param costsDays whether overdoing it costs the player days
 * @param settlesLate whether pain takes long to settle
 * @param tires whether the player tires within a session
 */
record PlayLimit(
    OptionalDouble comfortable,
    OptionalDouble minutes,
    boolean costsDays,
    boolean settlesLate,
    boolean tires) {
  /** The caution on tiredness says two thirds. */
  private static final double TWO_THIRDS = 2.0 / 3;

  /** The caution on pain that settles late says a third to a half less; this is the shorter. */
  private static final double HALF = 0.5;

  private static final double STEP_MINUTES = 5;

  /** Below this many minutes, whole minutes count. */
  private static final double SMALL = 15;

  /** The longest usual first try (common practice). */
  private static final double FIRST_TRY = 15;

  static PlayLimit of(PageInput input) {
    boolean settlesLate = input.warns("C-PAIN2H");
    boolean tires = input.warns("C-FATIGUE");
    OptionalDouble told = input.facts().number("end.minutes");
    OptionalDouble comfortable = told.orElse(0) > 0 ? told : OptionalDouble.empty();
    boolean costsDays = input.warns("C-PEM");
    // Half where overdoing costs days: the same share as in the plan of a session.
    double share = settlesLate || costsDays ? HALF : tires ? TWO_THIRDS : 1;
    return new PlayLimit(
        comfortable,
        comfortable.isEmpty()
            ? comfortable
            : OptionalDouble.of(rounded(comfortable.getAsDouble() * share, share < 1)),
        costsDays,
        settlesLate,
        tires);
  }

  /** A caution without a share of the comfortable time where a stricter one holds. */
  static Warning withoutAnother(PageInput input, Warning warning) {
    return input.warns("C-PEM") || input.warns("C-PAIN2H")
        ? Without.actions(warning, a -> a.contains("two thirds"))
        : warning;
  }

  /** Whether this many minutes of play stay below the limit; true where no limit is known. */
  boolean allows(double wanted) {
    return minutes.isEmpty()
        || (costsDays ? minutes.getAsDouble() > wanted : minutes.getAsDouble() >= wanted);
  }

  /** How long the first try is to be. */
  String firstTry() {
    if (allows(FIRST_TRY)) {
      return minutes.isPresent() && !costsDays
          ? "Make the first try 10 to 15 minutes."
          : "Make the first try 10 to 15 minutes, or less where your limit is less.";
    }
    double limit = minutes.orElse(1);
    return limit <= 1
        ? "Make the first try a minute or less."
        : "Start with less than " + words(limit) + ".";
  }

  /** "1 minute", "20 minutes". */
  static String words(double minutes) {
    return Wording.number(minutes) + (minutes == 1 ? " minute" : " minutes");
  }

  /** Down to steps of 5, for short times to whole minutes; never nothing. */
  private static double rounded(double minutes, boolean inSteps) {
    double step = !inSteps || minutes < SMALL ? 1 : STEP_MINUTES;
    // Two thirds of 15 is 10, whatever the last binary digit says.
    return Math.max(1, Math.floor(minutes / step + 1e-9) * step);
  }
}
