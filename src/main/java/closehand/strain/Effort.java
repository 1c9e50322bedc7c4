package closehand.strain;

import closehand.bank.Problem;
import closehand.bank.Where;
import java.util.List;
import java.util.OptionalDouble;

/**
 * Effort as a share of this person's own maximum, never of anybody else's.
 *
 * <p>A rating counts a tenth a point (the scheme of the hand activity form, Bernard 2002; another
 * scheme puts low ratings lower, so this is the more careful one).
 */
public final class Effort {
  private static final double TOP_RATING = 10;

  /**
   * More than non-disabled adults press with one finger: mean 108 N and three and a half standard
   * deviations of 42 N (120 adults, index finger; second-hand).
   */
  public static final double MOST_FINGER_NEWTONS = 255;

  /**
   * More than non-disabled adults grip: men of 30 to 34, mean 542 N and three standard deviations
   * of 100 N (Mathiowetz et al. 1985).
   */
  public static final double MOST_HAND_NEWTONS = 840;

  private Effort() {}

  /** The share behind a rating from 0, nothing, to 10, the most this person can do. */
  public static OptionalDouble ofRating(Where where, double rating, List<Problem> problems) {
    if (!(rating >= 0 && rating <= TOP_RATING)) {
      problems.add(
          Problem.error(
              where,
              "effort-range",
              "Effort is a number from 0 to 10.",
              "Give 0 for no effort at all, 10 for the most you can do there."));
      return OptionalDouble.empty();
    }
    return OptionalDouble.of(rating / TOP_RATING);
  }

  /**
   * The share behind a needed force and this person's measured maximum at the same place. No
   * question measures such a maximum yet, so no figure of the program comes from it.
   *
   * @param mostNewtons what cannot be exceeded there, such as {@link #MOST_FINGER_NEWTONS}
   */
  public static OptionalDouble ofForces(
      Where where,
      double neededNewtons,
      double maximumNewtons,
      double mostNewtons,
      List<Problem> problems) {
    if (!(maximumNewtons > 0 && maximumNewtons <= mostNewtons)) {
      problems.add(
          Problem.error(
              where,
              "force-range",
              "The measured maximum must be above 0 and at most "
                  + Math.round(mostNewtons)
                  + " newtons there.",
              "Check the unit: 10 newtons are about the weight of 1 kilogram."));
      return OptionalDouble.empty();
    }
    if (!(neededNewtons >= 0 && neededNewtons <= maximumNewtons)) {
      problems.add(
          Problem.error(
              where,
              "force-needed",
              "The force needed must be from 0 to the measured maximum.",
              "A control that needs more than that cannot be worked there: choose a lighter one."));
      return OptionalDouble.empty();
    }
    return OptionalDouble.of(neededNewtons / maximumNewtons);
  }
}
