package closehand.strain;

import java.util.Comparator;
import java.util.List;

/**
 * One thing that makes a load what it is.
 *
 * @param effector the body part it belongs to, or empty where the figure is about one part anyway
 * @param factor what it is
 * @param times how many times the usual reference it counts; above 1 it raises the load
 */
public record Driver(String effector, Factor factor, double times) {
  private static final Comparator<Driver> HEAVIEST_FIRST =
      Comparator.comparingDouble(Driver::times)
          .reversed()
          .thenComparing(Driver::factor)
          .thenComparing(Driver::effector);

  /** The two that count most, heaviest first; the same for any order they come in. */
  public static List<Driver> biggest(List<Driver> all) {
    if (all.size() < 2) {
      return List.copyOf(all);
    }
    Driver first = all.get(0);
    Driver second = all.get(1);
    if (HEAVIEST_FIRST.compare(second, first) < 0) {
      first = second;
      second = all.get(0);
    }
    for (Driver one : all.subList(2, all.size())) {
      if (HEAVIEST_FIRST.compare(one, first) < 0) {
        second = first;
        first = one;
      } else if (HEAVIEST_FIRST.compare(one, second) < 0) {
        second = one;
      }
    }
    return List.of(first, second);
  }

  /** The same for a named body part. */
  public Driver of(String bodyPart) {
    return new Driver(bodyPart, factor, times);
  }
}
