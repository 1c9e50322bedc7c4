package closehand.strain;

/** Where a figure lies among the bands of its method, lightest first. */
public enum Band {
  /** Below the first line of the method. */
  LOWER,
  /** Between its lines. */
  MIDDLE,
  /** Above its last line. */
  UPPER;

  /**
   * The band of a figure between two lines; a figure on a line belongs to the lower band.
   *
   * @param first where the middle band begins
   * @param last where the upper band begins
   */
  public static Band of(double value, double first, double last) {
    if (value > last) {
      return UPPER;
    }
    return value > first ? MIDDLE : LOWER;
  }

  /** The heavier of two. */
  public Band orHeavier(Band other) {
    return compareTo(other) >= 0 ? this : other;
  }
}
