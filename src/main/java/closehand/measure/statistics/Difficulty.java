package closehand.measure.statistics;

/** How hard a target is to hit, in bits: how far away it is beside how wide it is. */
public final class Difficulty {
  private Difficulty() {}

  /**
   * The form of ISO 9241-411 and Soukoreff and MacKenzie 2004: log2(distance / width + 1).
   *
   * @param distance to the middle of the target, 0 or more
   * @param width of the target in the same unit, above 0
   */
  public static double bits(double distance, double width) {
    check(distance, width);
    return log2(distance / width + 1);
  }

  /** The first form, Fitts 1954: log2(2 distance / width). For comparison with his figures only. */
  public static double bitsOf1954(double distance, double width) {
    check(distance, width);
    return log2(2 * distance / width);
  }

  static double log2(double value) {
    return Math.log(value) / Math.log(2);
  }

  private static void check(double distance, double width) {
    if (!(distance >= 0) || !(width > 0)) {
      throw new IllegalArgumentException("a distance of 0 or more, a width above 0");
    }
  }
}
