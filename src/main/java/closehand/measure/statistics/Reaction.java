package closehand.measure.statistics;

import java.util.List;

/** What a choice costs beside a plain press, and a reaction without a computer. */
public final class Reaction {
  private static final double GRAVITY = 9.80665;

  private Reaction() {}

  /** Bits of a choice among so many equal ones, a choice being forced: log2(n) (Hyman 1953). */
  public static double bits(int choices) {
    if (choices < 1) {
      throw new IllegalArgumentException("at least one choice");
    }
    return Difficulty.log2(choices);
  }

  /** The same for choices that come up with these shares, which make 1 (Hyman 1953). */
  public static double bits(List<Double> shares) {
    return shares.stream().filter(p -> p > 0).mapToDouble(p -> p * Difficulty.log2(1 / p)).sum();
  }

  /** Seconds that a ruler fell before it was caught: free fall. */
  public static double secondsOfFall(double centimetres) {
    return Math.sqrt(2 * centimetres / 100 / GRAVITY);
  }
}
