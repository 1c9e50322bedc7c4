package closehand.strain;

import java.util.Arrays;
import java.util.List;
import java.util.function.ToDoubleFunction;

/** Sums that are the same to the last bit for any order of what is summed. */
final class Sums {
  private Sums() {}

  /** The sum, smallest first. */
  static double of(List<Exertion> presses, ToDoubleFunction<Exertion> what) {
    double[] values = new double[presses.size()];
    for (int i = 0; i < values.length; i++) {
      values[i] = what.applyAsDouble(presses.get(i));
    }
    Arrays.sort(values);
    double sum = 0;
    for (double value : values) {
      sum += value;
    }
    return sum;
  }
}
