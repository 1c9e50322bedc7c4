package closehand.measure.statistics;

/**
 * How much a measurement of one person moves by itself, and how large a change must be to stand out
 * from that (Jacobson and Truax 1991).
 *
 * @param error the standard error of one measurement, 0 or more, in its unit
 */
public record Wobble(double error) {
  /** Nineteen of twenty changes by wobble alone are smaller than this many standard errors. */
  private static final double NINETEEN_OF_TWENTY = 1.96;

  /** Refuses an error below 0. */
  public Wobble {
    if (!(error >= 0)) {
      throw new IllegalArgumentException("an error of 0 or more");
    }
  }

  /** From a person's own repeats of the same thing; at least two. */
  public static Wobble ofRepeats(Sample repeats) {
    return new Wobble(repeats.deviation());
  }

  /** From two rows of repeats, each around its own mean, put together; at least two in each. */
  public static Wobble ofRepeats(Sample first, Sample second) {
    int a = first.size() - 1;
    int b = second.size() - 1;
    double variance =
        (a * first.deviation() * first.deviation() + b * second.deviation() * second.deviation())
            / (a + b);
    return new Wobble(Math.sqrt(variance));
  }

  /**
   * From a study of people measured twice.
   *
   * @param deviation between people
   * @param reliability how well two measurements agree, 0 to 1
   */
  public static Wobble ofStudy(double deviation, double reliability) {
    return new Wobble(deviation * Math.sqrt(1 - reliability));
  }

  /** The standard error of the difference of two measurements. */
  public double ofDifference() {
    return Math.sqrt(2) * error;
  }

  /** A change as a multiple of the error of a difference; beyond 1.96 it is called reliable. */
  public double multiple(double change) {
    if (error == 0) {
      throw new IllegalArgumentException("no multiple of an error of 0");
    }
    return change / ofDifference();
  }

  /** The smallest change between two single measurements that stands out from wobble. */
  public double smallestChange() {
    return smallestChange(1, 1);
  }

  /** The same between the means of so many measurements before and after. */
  public double smallestChange(int before, int after) {
    if (before < 1 || after < 1) {
      throw new IllegalArgumentException("at least one measurement each");
    }
    return NINETEEN_OF_TWENTY * error * Math.sqrt(1.0 / before + 1.0 / after);
  }
}
