package closehand.measure.norms;

import java.util.Optional;
import java.util.OptionalDouble;

/** A measurement beside what is usual, or that nothing fits. */
public sealed interface Comparison {
  /**
   * Beside one table.
   *
   * @param origin the table
   * @param usual the mean or middle of the group, in kilograms
   * @param share the measurement as a share of it
   * @param deviations standard deviations from it, where the spread was confirmed
   * @param percent per cent of the group below, in words, where it can be told
   */
  record Beside(
      Origin origin,
      double usual,
      double share,
      OptionalDouble deviations,
      Optional<String> percent)
      implements Comparison {}

  /** No table fits, and none is borrowed. */
  record NoNorm(Strength strength) implements Comparison {}
}
