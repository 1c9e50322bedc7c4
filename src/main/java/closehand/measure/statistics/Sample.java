package closehand.measure.statistics;

import java.util.List;

/**
 * Measurements of one thing in the order they were made.
 *
 * @param values finite numbers in one unit
 */
public record Sample(List<Double> values) {
  /**
   * Takes a copy.
   *
   * @throws IllegalArgumentException if a value is not finite
   */
  public Sample {
    values = List.copyOf(values);
    if (values.stream().anyMatch(v -> !Double.isFinite(v))) {
      throw new IllegalArgumentException("a measurement is a finite number");
    }
  }

  /** A sample of these numbers. */
  public static Sample of(double... values) {
    return new Sample(java.util.Arrays.stream(values).boxed().toList());
  }

  /** How many there are. */
  public int size() {
    return values.size();
  }

  /** The arithmetic mean; at least one value. */
  public double mean() {
    needs(1);
    return values.stream().mapToDouble(v -> v).sum() / values.size();
  }

  /** The middle value, or the mean of the two in the middle; at least one value. */
  public double median() {
    needs(1);
    double[] sorted = values.stream().mapToDouble(v -> v).sorted().toArray();
    int half = sorted.length / 2;
    return sorted.length % 2 == 1 ? sorted[half] : (sorted[half - 1] + sorted[half]) / 2;
  }

  /** The standard deviation of a sample, divisor n - 1; at least two values. */
  public double deviation() {
    needs(2);
    double mean = mean();
    double squares = values.stream().mapToDouble(v -> (v - mean) * (v - mean)).sum();
    return Math.sqrt(squares / (values.size() - 1));
  }

  /** The deviation as a share of the mean; at least two values and a mean other than 0. */
  public double variation() {
    if (mean() == 0) {
      throw new IllegalArgumentException("no share of a mean of 0");
    }
    return deviation() / mean();
  }

  /** The same values with the other sign, for measures where less is better. */
  public Sample negated() {
    return new Sample(values.stream().map(v -> 0 - v).toList());
  }

  private void needs(int count) {
    if (values.size() < count) {
      throw new IllegalArgumentException("at least " + count + " measurements");
    }
  }
}
