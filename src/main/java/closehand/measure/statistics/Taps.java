package closehand.measure.statistics;

import java.util.ArrayList;
import java.util.List;

/** Taps of one key: how many, how even, and whether the key was tapped at all. */
public final class Taps {
  private static final double REPEAT_SECONDS = 0.05;
  private static final int REPEATS_IN_A_ROW = 4;

  private Taps() {}

  /** Taps each second. */
  public static double perSecond(int taps, double seconds) {
    if (taps < 0 || !(seconds > 0)) {
      throw new IllegalArgumentException("taps in some time");
    }
    return taps / seconds;
  }

  /** The times between taps, in the unit of the moments. */
  public static Sample between(List<Double> moments) {
    List<Double> times = new ArrayList<>();
    for (int i = 1; i < moments.size(); i++) {
      times.add(moments.get(i) - moments.get(i - 1));
    }
    return new Sample(times);
  }

  /** How much fewer the other hand taps, in per cent of the hand that is used more. */
  public static double sideDifferencePercent(double usedMore, double other) {
    if (!(usedMore > 0)) {
      throw new IllegalArgumentException("some taps of the hand used more");
    }
    return 100 * (usedMore - other) / usedMore;
  }

  /**
   * Whether a key was held and the machine repeated it: four times or more in a row less than 50 ms
   * apart (our own threshold; a hand does not reach twenty taps a second).
   *
   * @param secondsBetween in order
   */
  public static boolean isHeldKey(Sample secondsBetween) {
    int row = 0;
    for (double seconds : secondsBetween.values()) {
      row = seconds < REPEAT_SECONDS ? row + 1 : 0;
      if (row >= REPEATS_IN_A_ROW) {
        return true;
      }
    }
    return false;
  }
}
