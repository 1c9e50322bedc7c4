package closehand.plan.problem;

/**
 * What working an input costs.
 *
 * @param pressMilliPoints thousandths of a point for one press, 0 to 1,000,000
 * @param holdMilliPointsPerSecond thousandths of a point for one second held, 0 to 1,000,000
 */
public record Effort(int pressMilliPoints, int holdMilliPointsPerSecond) {

  /** The highest value of either number. */
  public static final int MOST = 1_000_000;

  /** An effort in whole points. */
  public static Effort points(int press, int holdPerSecond) {
    return new Effort(1000 * press, 1000 * holdPerSecond);
  }
}
