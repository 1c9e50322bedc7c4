package closehand.measure.statistics;

import closehand.measure.norms.Bell;

/**
 * How often chance alone would part two groups at least as far as they were seen to part.
 *
 * @param twoSided a share from 0 to 1, counting both directions
 * @param exact whether every way was counted; otherwise it is a normal approximation
 */
public record Chance(double twoSided, boolean exact) {
  /**
   * Up to this share a difference is not put down to chance (the usual convention, Fisher 1925).
   */
  public static final double USUAL_LIMIT = 0.05;

  /** Refuses what is no share. */
  public Chance {
    if (!(twoSided >= 0 && twoSided <= 1)) {
      throw new IllegalArgumentException("a share from 0 to 1");
    }
  }

  /** Whether chance alone would do this at most once in twenty times. */
  public boolean isSmall() {
    return twoSided <= USUAL_LIMIT;
  }

  /** A share of both tails of the bell curve beyond a distance of 0 or more. */
  static Chance approximate(double deviations) {
    return new Chance(Math.min(1, 2 * Bell.percentBelow(-Math.max(0, deviations)) / 100), false);
  }
}
