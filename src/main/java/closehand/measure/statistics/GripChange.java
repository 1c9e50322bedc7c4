package closehand.measure.statistics;

/**
 * When a grip measured again has changed by more than measuring alone does (Bai and others 2019,
 * people with an injured arm or hand). The error of a weak grip grows with the grip, so no one
 * figure serves.
 */
public final class GripChange {
  private static final double WEAK_TO_KILOGRAMS = 20;
  private static final double STRONGER_KILOGRAMS = 5.1;

  private GripChange() {}

  /**
   * Bounds that measuring alone stays within.
   *
   * @param fall kilograms, below 0
   * @param rise kilograms, above 0
   */
  public record Bounds(double fall, double rise) {
    /** Whether a change lies within. */
    public boolean hold(double kilograms) {
      return kilograms >= fall && kilograms <= rise;
    }
  }

  /**
   * The bounds for a grip.
   *
   * @param kilograms the first measurement, 0 or more
   */
  public static Bounds around(double kilograms) {
    return kilograms <= WEAK_TO_KILOGRAMS
        ? new Bounds(-.41 * kilograms - .39, .41 * kilograms + 1.24)
        : new Bounds(-STRONGER_KILOGRAMS, STRONGER_KILOGRAMS);
  }
}
