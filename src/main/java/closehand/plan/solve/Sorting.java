package closehand.plan.solve;

import java.util.Arrays;
import java.util.function.IntToLongFunction;

/** Sorts indexes by a value, equal values by index, without boxing them. */
final class Sorting {
  private Sorting() {}

  static int[] by(int[] items, IntToLongFunction value) {
    int[] sorted = items.clone();
    Arrays.sort(sorted);
    long[] values = new long[sorted.length];
    for (int i = 0; i < values.length; i++) {
      values[i] = value.applyAsLong(sorted[i]);
    }
    for (int i = 1; i < sorted.length; i++) {
      int item = sorted[i];
      long v = values[i];
      int j = i - 1;
      for (; j >= 0 && values[j] > v; j--) {
        sorted[j + 1] = sorted[j];
        values[j + 1] = values[j];
      }
      sorted[j + 1] = item;
      values[j + 1] = v;
    }
    return sorted;
  }
}
