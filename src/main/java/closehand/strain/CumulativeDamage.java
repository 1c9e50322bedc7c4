package closehand.strain;

/**
 * Damage of one press (Gallagher, Schall, Sesek, Huangfu 2018): a cross-check for tests, in no
 * figure of the program.
 *
 * <p>The published step from damage to a chance of complaints is left out on purpose: it mirrors
 * one workforce and is never to be shown.
 */
public final class CumulativeDamage {
  private static final double[] PER_PRESS = {
    2.6e-7,
    4.5e-7,
    1.37e-6,
    4.13e-6,
    1.262e-5,
    3.801e-5,
    1.1625e-4,
    3.5014e-4,
    1.05374e-3,
    3.22581e-3,
    9.70874e-3
  };

  private CumulativeDamage() {}

  /**
   * What one press adds, between whole ratings along a straight line of its logarithm (our choice).
   *
   * @param effortRating 0 to 10
   */
  public static double ofOnePress(double effortRating) {
    if (!(effortRating >= 0 && effortRating <= 10)) {
      throw new IllegalArgumentException("an effort outside 0 to 10");
    }
    int below = (int) Math.min(9, Math.floor(effortRating));
    double part = effortRating - below;
    return part == 0
        ? PER_PRESS[below]
        : PER_PRESS[below] * Math.pow(PER_PRESS[below + 1] / PER_PRESS[below], part);
  }
}
