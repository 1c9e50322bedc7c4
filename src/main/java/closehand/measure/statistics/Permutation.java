package closehand.measure.statistics;

/**
 * Tests that deal the same values out in every other way there is (Fisher 1935; Pitman 1937): two
 * groups by their means, or pairs by the signs of their differences.
 *
 * <p>Every way is counted up to 200,000; 10 against 10 are 184,756, 17 pairs 131,072. Beyond that
 * the sum over the ways is near the bell curve (Wald and Wolfowitz 1944), which is used and said;
 * at least 18 values stand behind it then. Nothing is drawn by chance.
 */
public final class Permutation {
  /** Most ways that are counted one by one. */
  static final long MOST_WAYS = 200_000;

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
    double[] all = new double[m + n];
    double middle = (sum(first) + sum(second)) / (m + n);
    for (int i = 0; i < all.length; i++) {
      all[i] = (i < m ? first.values().get(i) : second.values().get(i - m)) - middle;
    }
    // Around their common middle the sum of one group alone tells how far the means part.
    double seen = 0;
    for (int i = 0; i < m; i++) {
      seen += all[i];
    }
    double far = Math.abs(seen) - SAME * all.length * largest(all);
    if (ways(m + n, m) > MOST_WAYS) {
      double total = m + n;
      return Chance.approximate(
          deviations(far, Math.sqrt(squares(all) * m * n / (total * (total - 1)))));
    }
    long[] asFarAndEvery = new long[2];
    deal(all, 0, m, 0, far, asFarAndEvery);
    return new Chance((double) asFarAndEvery[0] / asFarAndEvery[1], true);
  }

  private static void deal(
      double[] all, int next, int open, double sum, double far, long[] counts) {
    if (open == 0) {
      counts[0] += Math.abs(sum) >= far ? 1 : 0;
      counts[1]++;
      return;
    }
    for (int i = next; i <= all.length - open; i++) {
      deal(all, i + 1, open - 1, sum + all[i], far, counts);
    }
  }

  /**
   * How often turning the signs of paired differences lets their sum reach at least as far.
   *
   * @param differences of pairs, at least one
   */
  public static Chance signs(Sample differences) {
    double[] all = differences.values().stream().mapToDouble(v -> v).toArray();
    if (all.length == 0) {
      throw new IllegalArgumentException("at least one pair");
    }
    double far = Math.abs(sum(differences)) - SAME * all.length * largest(all);
    if (all.length > 17) {
      return Chance.approximate(deviations(far, Math.sqrt(squares(all))));
    }
    int every = 1 << all.length;
    int asFar = 0;
    for (int signs = 0; signs < every; signs++) {
      double sum = 0;
      for (int i = 0; i < all.length; i++) {
        sum += (signs >> i & 1) == 0 ? all[i] : -all[i];
      }
      asFar += Math.abs(sum) >= far ? 1 : 0;
    }
    return new Chance((double) asFar / every, true);
  }

  /** In how many ways some can be chosen of all; stops counting beyond {@link #MOST_WAYS}. */
  static long ways(int all, int some) {
    long ways = 1;
    for (int i = 1; i <= Math.min(some, all - some); i++) {
      ways = ways * (all - i + 1) / i;
      if (ways > MOST_WAYS) {
        return ways;
      }
    }
    return ways;
  }

  private static double deviations(double far, double spread) {
    return spread == 0 ? 0 : far / spread;
  }

  private static double sum(Sample sample) {
    return sample.mean() * sample.size();
  }

  private static double squares(double[] values) {
    return java.util.Arrays.stream(values).map(v -> v * v).sum();
  }

  private static double largest(double[] values) {
    return java.util.Arrays.stream(values).map(Math::abs).max().orElse(0);
  }
}
