package closehand.plan.supply;

/**
 * What was measured of one input, as differences to what would be taken otherwise.
 *
 * @param moreMillis milliseconds more (below 0: less) from wish to press; never makes an input too
 *     slow for a game or quick enough for it, since only differences can be measured
 * @param moreMissesPerMille misses more (below 0: fewer) of a thousand presses
 * @param effortTimes how many times as hard it gets while playing, 1 to {@link #MOST_TIMES}
 */
public record Measured(int moreMillis, int moreMissesPerMille, double effortTimes) {
  /** Nothing measured makes an input harder than this (a practice estimate, no source). */
  public static final double MOST_TIMES = 1.5;

  /** Nothing is different. */
  public static final Measured NOTHING = new Measured(0, 0, 1);

  /** Refuses a factor out of range. */
  public Measured {
    if (!(effortTimes >= 1 && effortTimes <= MOST_TIMES)) {
      throw new IllegalArgumentException("a factor from 1 to " + MOST_TIMES);
    }
  }
}
