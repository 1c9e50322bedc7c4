package closehand.measure.statistics;

import java.util.ArrayList;
import java.util.List;

/**
 * How much taps or holds go down from the first stretch of time to the last.
 *
 * @param stretches counts or forces of stretches of the same length, in order, all above 0
 */
public record Decline(Sample stretches) {
  /**
   * A decline of taps in 30 s above this, in per cent, is worth easing off. About one in twenty of
   * 194 non-disabled people of 18 to 30 years went down by more: mean 17.0, standard deviation 6.9
   * (Heimhofer and others 2024). Context for a caution, never a verdict.
   */
  public static final double EASE_OFF_PERCENT = 28.4;

  /** Refuses fewer than two stretches and any that is not above 0. */
  public Decline {
    if (stretches.size() < 2 || stretches.values().stream().anyMatch(v -> !(v > 0))) {
      throw new IllegalArgumentException("two stretches or more, all above 0");
    }
  }

  /** From the first stretch to the last, in per cent of the first; below 0 for a rise. */
  public double percent() {
    List<Double> all = stretches.values();
    return 100 * (all.get(0) - all.get(all.size() - 1)) / all.get(0);
  }

  /** From the first third to the last, in per cent of the first; at least three stretches. */
  public double percentByThirds() {
    int third = stretches.size() / 3;
    List<Double> all = stretches.values();
    double first = new Sample(all.subList(0, third)).mean();
    double last = new Sample(all.subList(all.size() - third, all.size())).mean();
    return 100 * (1 - last / first);
  }

  /** What is missing beside keeping the highest stretch all the time, in per cent. */
  public double percentBelowHighest() {
    double highest = stretches.values().stream().mapToDouble(v -> v).max().orElseThrow();
    return 100 * (1 - stretches.mean() / highest);
  }

  /** The straight line through the stretches, the first standing at 0. */
  public Line line() {
    return Line.through(places(), stretches.values());
  }

  /** The same through the natural logarithms, for a decline by shares. */
  public Line lineOfLogarithms() {
    return Line.through(places(), stretches.values().stream().map(Math::log).toList());
  }

  private List<Double> places() {
    List<Double> places = new ArrayList<>();
    for (int i = 0; i < stretches.size(); i++) {
      places.add((double) i);
    }
    return places;
  }
}
