package closehand.measure.statistics;

import java.util.ArrayList;
import java.util.Arrays;
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
    for (double value : values) {
      if (!Double.isFinite(value)) {
        throw new IllegalArgumentException("a measurement is a finite number");
      }
    }
  }

  /** A sample of these numbers. */
  public static Sample of(double... values) {
    List<Double> all = new ArrayList<>();
    for (double value : values) {
      all.add(value);
    }
    return new Sample(all);
  }

  /** How many there are. */
  public int size() {
    return values.size();
  }

  /** The arithmetic mean; at least one value. */
  public double mean() {
    needs(1);
    return sum() / values.size();
  }

  /** All of them together; 0 for none. */
  double sum() {
    double sum = 0;
    for (double value : values) {
      sum += value;
    }
    return sum;
  }

  /** As a field of numbers, in order. */
  double[] numbers() {
    double[] numbers = new double[values.size()];
    for (int i = 0; i < numbers.length; i++) {
      numbers[i] = values.get(i);
    }
    return numbers;
  }

  /** The middle value, or the mean of the two in the middle; at least one value. */
  public double median() {
    needs(1);
    double[] sorted = numbers();
    Arrays.sort(sorted);
    int half = sorted.length / 2;
    return sorted.length % 2 == 1 ? sorted[half] : (sorted[half - 1] + sorted[half]) / 2;
  }

  /** The standard deviation of a sample, divisor n - 1; at least two values. */
  public double deviation() {
    needs(2);
    double mean = mean();
    double squares = 0;
    for (double value : values) {
      squares += (value - mean) * (value - mean);
    }
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
    List<Double> turned = new ArrayList<>();
    for (double value : values) {
      turned.add(0 - value);
    }
    return new Sample(turned);
  }

  private void needs(int count) {
    if (values.size() < count) {
      throw new IllegalArgumentException("at least " + count + " measurements");
    }
  }
}
