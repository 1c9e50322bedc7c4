package closehand.measure.statistics;

import java.util.Arrays;

/**
 * Tests that deal the same values out in every other way there is (Fisher 1935; Pitman 1937): two
 * groups by their means, or pairs by the signs of their differences.
 *
 * <p>Up to 32 values every way is counted, each half of the values apart and then both together
 * (after Horowitz and Sahni 1974), so that 10 against 10 with its 184,756 ways takes some thousand
 * steps. Beyond that the sum over the ways is near the bell curve (Wald and Wolfowitz 1944), which
 * is used and said. Nothing is drawn by chance.
 */
public final class Permutation {
  /** Most values of which every way is counted. */
  static final int MOST_COUNTED = 32;

  /** Sums that differ by less than this share of the largest value are the same. */
  private static final double SAME = 1e-12;

  private Permutation() {}

  /**
   * How often dealing the values out anew parts the means at least as far.
   *
   * @param first at least one value
   * @param second at least one value
   */
  public static Chance means(Sample first, Sample second) {
    int m = first.size();
    int n = second.size();
    double[] all = Arrays.copyOf(first.numbers(), m + n);
    System.arraycopy(second.numbers(), 0, all, m, n);
    double middle = (first.sum() + second.sum()) / (m + n);
    double seen = 0;
    for (int i = 0; i < all.length; i++) {
      all[i] -= middle;
      seen += i < m ? all[i] : 0;
    }
    // Around their common middle the sum of one group alone tells how far the means part.
    double far = far(seen, all);
    if (all.length > MOST_COUNTED) {
      double total = m + n;
      double variance = squares(all) * m * n / (total * (total - 1));
      return Chance.approximate(deviations(far, Math.sqrt(variance)));
    }
    double[][] left = sumsBySize(all, 0, all.length / 2);
    double[][] right = sumsBySize(all, all.length / 2, all.length);
    long asFar = 0;
    long every = 0;
    for (int size = 0; size < right.length; size++) {
      int rest = m - size;
      if (rest >= 0 && rest < left.length) {
        every += (long) right[size].length * left[rest].length;
        asFar += together(left[rest], right[size], far);
      }
    }
    return new Chance((double) asFar / every, true);
  }

  /**
   * How often turning the signs of paired differences lets their sum reach at least as far.
   *
   * @param differences of pairs, at least one
   */
  public static Chance signs(Sample differences) {
    double[] all = differences.numbers();
    if (all.length == 0) {
      throw new IllegalArgumentException("at least one pair");
    }
    double far = far(differences.sum(), all);
    if (all.length > MOST_COUNTED) {
      return Chance.approximate(deviations(far, Math.sqrt(squares(all))));
    }
    double[] left = signedSums(all, 0, all.length / 2);
    double[] right = signedSums(all, all.length / 2, all.length);
    double every = (double) left.length * right.length;
    return new Chance(together(left, right, far) / every, true);
  }

  /** The sums of every choice among these values, by how many were chosen, each in order. */
  private static double[][] sumsBySize(double[] all, int from, int to) {
    int count = to - from;
    double[][] sums = new double[count + 1][];
    int[] filled = new int[count + 1];
    for (int size = 0; size <= count; size++) {
      sums[size] = new double[(int) ways(count, size)];
    }
    double[] sum = new double[1 << count];
    for (int mask = 0; mask < sum.length; mask++) {
      if (mask > 0) {
        int last = Integer.numberOfTrailingZeros(mask);
        sum[mask] = sum[mask & (mask - 1)] + all[from + last];
      }
      int size = Integer.bitCount(mask);
      sums[size][filled[size]++] = sum[mask];
    }
    for (double[] some : sums) {
      Arrays.sort(some);
    }
    return sums;
  }

  /** The sums of these values with every choice of signs, in order. */
  private static double[] signedSums(double[] all, int from, int to) {
    double[] sums = new double[1 << (to - from)];
    for (int signs = 0; signs < sums.length; signs++) {
      double sum = 0;
      for (int i = from; i < to; i++) {
        sum += (signs >> (i - from) & 1) == 0 ? all[i] : -all[i];
      }
      sums[signs] = sum;
    }
    Arrays.sort(sums);
    return sums;
  }

  /** Pairs of one sum of each half that together are this far from 0 or farther. */
  private static long together(double[] left, double[] right, double far) {
    if (far <= 0) {
      return (long) left.length * right.length;
    }
    long pairs = 0;
    // As the right one grows, the left one that just reaches moves down.
    int above = left.length;
    int below = left.length;
    for (double one : right) {
      while (above > 0 && left[above - 1] + one >= far) {
        above--;
      }
      while (below > 0 && left[below - 1] + one > -far) {
        below--;
      }
      pairs += left.length - above + below;
    }
    return pairs;
  }

  /** In how many ways some can be chosen of all, up to 32. */
  static long ways(int all, int some) {
    long ways = 1;
    for (int i = 1; i <= Math.min(some, all - some); i++) {
      ways = ways * (all - i + 1) / i;
    }
    return ways;
  }

  private static double far(double seen, double[] all) {
    double largest = 0;
    for (double value : all) {
      largest = Math.max(largest, Math.abs(value));
    }
    return Math.abs(seen) - SAME * all.length * largest;
  }

  private static double deviations(double far, double spread) {
    return spread == 0 ? 0 : far / spread;
  }

  private static double squares(double[] values) {
    double sum = 0;
    for (double value : values) {
      sum += value * value;
    }
    return sum;
  }
}
