package closehand.strain;

import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/**
 * One thing that makes a load what it is.
 *
 * @param effector the body part it belongs to, or empty where the figure is about one part anyway
 * @param factor what it is
 * @param times how many times the usual reference it counts; above 1 it raises the load
 */
public record Driver(String effector, Factor factor, double times) {
  private static final int MOST = 2;

  /** The two that count most, heaviest first; the same for any order they come in. */
  public static List<Driver> biggest(Stream<Driver> all) {
    return all.sorted(
            Comparator.comparingDouble(Driver::times)
                .reversed()
                .thenComparing(Driver::factor)
                .thenComparing(Driver::effector))
        .limit(MOST)
        .toList();
  }

  /** The same for a named body part. */
  public Driver of(String bodyPart) {
    return new Driver(bodyPart, factor, times);
  }
}
