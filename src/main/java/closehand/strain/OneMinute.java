package closehand.strain;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * The presses of one hand, fitted into the minute that they share.
 *
 * <p>Where they take more than the minute together they overlap. Time that overlaps counts once, at
 * the higher effort: the seconds of the lighter presses give way, all presses stay.
 *
 * @param presses heaviest effort first; the same for any order they came in
 * @param seconds how long each counts, in the same order
 * @param overlapping whether any had to give way
 */
record OneMinute(List<Exertion> presses, List<Double> seconds, boolean overlapping) {
  private static final Comparator<Exertion> HEAVIEST_FIRST =
      Comparator.<Exertion>comparingDouble(OneMinute::strength)
          .reversed()
          .thenComparing(Exertion::effector)
          .thenComparingDouble(Exertion::perMinute)
          .thenComparingDouble(Exertion::seconds);

  /** Fits presses of one hand into the minute. */
  static OneMinute of(List<Exertion> ofOneHand) {
    List<Exertion> sorted = new ArrayList<>(ofOneHand);
    sorted.sort(HEAVIEST_FIRST);
    List<Double> seconds = new ArrayList<>(sorted.size());
    double left = Exertion.MINUTE;
    boolean overlapping = false;
    for (Exertion press : sorted) {
      double wanted = press.secondsPerMinute();
      boolean fits = wanted <= left + Exertion.ROUNDING;
      seconds.add(fits ? press.seconds() : left / press.perMinute());
      overlapping |= !fits;
      left = fits ? Math.max(0, left - wanted) : 0;
    }
    return new OneMinute(sorted, seconds, overlapping);
  }

  /** Whether one body part alone is asked for more than the minute. */
  static boolean isImpossible(List<Exertion> presses) {
    Map<String, Double> byPart = new HashMap<>();
    for (Exertion press : presses) {
      if (byPart.merge(press.effector(), press.secondsPerMinute(), Double::sum)
          > Exertion.MINUTE + Exertion.ROUNDING) {
        return true;
      }
    }
    return false;
  }

  /** What a press weighs apart from how often and how long. */
  private static double strength(Exertion press) {
    return RevisedStrainIndex.effort(press.effort())
        * RevisedStrainIndex.posture(press.wristDegrees());
  }

  /** What one press at this place weighs in the time it counts for. */
  double strengthOfOne(int place) {
    return strength(presses.get(place)) * RevisedStrainIndex.duration(seconds.get(place));
  }
}
