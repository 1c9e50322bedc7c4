package closehand.measure.norms;

/** The bell curve. */
public final class Bell {
  private static final double BEYOND = 8;

  private Bell() {}

  /**
   * How many standard deviations a value lies above a mean.
   *
   * @param deviation standard deviation, above 0
   */
  public static double deviations(double value, double mean, double deviation) {
    return (value - mean) / deviation;
  }

  /** Per cent of the bell curve below {@code z}, 0 to 100 (series of Marsaglia 2004). */
  public static double percentBelow(double z) {
    if (z < -BEYOND || z > BEYOND) {
      return z < 0 ? 0 : 100;
    }
    double sum = z;
    double term = z;
    for (int i = 3; sum + term != sum; i += 2) {
      term *= z * z / i;
      sum += term;
    }
    return 100 * (0.5 + sum * Math.exp(-z * z / 2) / Math.sqrt(2 * Math.PI));
  }

  /** Per cent in words: whole numbers, "less than 1", "more than 99". */
  public static String words(double percent) {
    if (percent < 1) {
      return "less than 1";
    }
    return percent > 99 ? "more than 99" : Long.toString(Math.round(percent));
  }
}
