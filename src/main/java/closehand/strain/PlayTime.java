package closehand.strain;

/**
 * How much somebody plays.
 *
 * @param hoursPerDay hours of play on a day with play, above 0 to 24
 * @param daysPerWeek days with play, 1 to 7; shown beside figures, in no method
 */
public record PlayTime(double hoursPerDay, int daysPerWeek) {
  /** Hours in a day. */
  public static final double DAY = 24;

  /** Refuses what cannot be; {@link ExertionCheck} tells a reader of input beforehand. */
  public PlayTime {
    if (!(hoursPerDay > 0 && hoursPerDay <= DAY) || daysPerWeek < 1 || daysPerWeek > 7) {
      throw new IllegalArgumentException("a time of play that cannot be; see ExertionCheck");
    }
  }
}
