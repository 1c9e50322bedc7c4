package closehand.strain;

import closehand.bank.Effectors;
import closehand.bank.Problem;
import closehand.bank.Where;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Says what is possible where figures of presses and play cannot be. */
public final class ExertionCheck {
  /** Faster than any finger taps; adults without impairment reach about 6 a second. */
  public static final double MOST_PER_MINUTE = 900;

  private final Where where;
  private final List<Problem> found = new ArrayList<>();

  private ExertionCheck(Where where) {
    this.where = where;
  }

  /**
   * One kind of press.
   *
   * @param effortRating from 0 to 10
   * @param problems receives everything that cannot be, each with what is possible
   * @return the press, or empty if anything cannot be
   */
  public static Optional<Exertion> exertion(
      Where where,
      String effector,
      double effortRating,
      double perMinute,
      double seconds,
      double wristDegrees,
      List<Problem> problems) {
    ExertionCheck check = new ExertionCheck(where);
    OptionalDouble effort = Effort.ofRating(where.child("effort"), effortRating, check.found);
    check.effector(effector);
    check.presses(perMinute, seconds);
    check.wrist(wristDegrees);
    problems.addAll(check.found);
    return check.found.isEmpty()
        ? Optional.of(
            new Exertion(effector, effort.orElseThrow(), perMinute, seconds, wristDegrees))
        : Optional.empty();
  }

  /** How much somebody plays; empty, with problems, if it cannot be. */
  public static Optional<PlayTime> playTime(
      Where where, double hoursPerDay, double daysPerWeek, List<Problem> problems) {
    ExertionCheck check = new ExertionCheck(where);
    if (!(hoursPerDay > 0 && hoursPerDay <= PlayTime.DAY)) {
      check.add(
          "hours",
          "hours-range",
          "Hours of play a day must be above 0 and at most 24.",
          "Give the hours of a day with play; half an hour is 0.5.");
    }
    if (!(daysPerWeek >= 1 && daysPerWeek <= 7 && daysPerWeek == Math.rint(daysPerWeek))) {
      check.add(
          "days",
          "days-range",
          "Days with play must be a whole number from 1 to 7.",
          "Count the days of a usual week on which you play.");
    }
    problems.addAll(check.found);
    return check.found.isEmpty()
        ? Optional.of(new PlayTime(hoursPerDay, (int) daysPerWeek))
        : Optional.empty();
  }

  private void effector(String effector) {
    if (!Effectors.all().contains(effector)) {
      found.add(BodyPart.unknown(where.child("effector")));
    }
  }

  private void presses(double perMinute, double seconds) {
    if (!(perMinute > 0 && perMinute <= MOST_PER_MINUTE)) {
      add(
          "perMinute",
          "frequency-range",
          "Presses a minute must be above 0 and at most 900.",
          "Leave out what is never pressed.");
    }
    if (!(seconds > 0 && seconds <= PlayTime.DAY * 60 * Exertion.MINUTE)) {
      add(
          "seconds",
          "seconds-range",
          "Seconds of each press must be above 0.",
          "A quick tap takes about 0.1 seconds.");
    }
    if (found.isEmpty() && perMinute * seconds > Exertion.MINUTE + Exertion.ROUNDING) {
      add(
          "seconds",
          "more-than-a-minute",
          "These presses take more than the whole minute.",
          "Presses a minute times seconds of each must not exceed 60.");
    }
  }

  private void wrist(double degrees) {
    if (!(degrees >= -90 && degrees <= 90)) {
      add(
          "wrist",
          "wrist-range",
          "The angle of the wrist must lie between -90 and 90 degrees.",
          "Straight is 0; bent back counts up, bent towards the palm counts down.");
    }
  }

  private void add(String member, String code, String what, String mend) {
    found.add(Problem.error(where.child(member), code, what, mend));
  }
}
