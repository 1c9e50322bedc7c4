package closehand.strain;

/**
 * How large a part of the time an effort can fill (Potvin 2012), written down from memory.
 *
 * <p>A cross-check for tests, in no figure of the program: to be checked against the paper first,
 * and never more than a hint that a pattern leaves little time to let go.
 */
public final class DutyCycle {
  private static final double EXPONENT = 0.24;
  private static final double ONE_SECOND_OF_A_DAY = 1.0 / 28_800;

  private DutyCycle() {}

  /** The largest share of the time for an effort, both 0 to 1; never above 1. */
  public static double largestShare(double effort) {
    return Math.min(1, Math.pow(1 - effort, 1 / EXPONENT) + ONE_SECOND_OF_A_DAY);
  }
}
