package closehand.measure.statistics;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * The exact test of ranks for two groups (Wilcoxon 1945; Mann and Whitney 1947), equal values
 * sharing the mean of their ranks.
 *
 * @param pairsWon in how many pairs of one value of each group the second group's is higher, an
 *     equal pair counting half (Mann and Whitney's U)
 * @param pairs all pairs
 * @param chance how often chance alone parts the ranks so far
 */
public record Ranks(double pairsWon, int pairs, Chance chance) {
  /** Most values of both groups that are counted exactly; of 66 every count fits. */
  static final int MOST_COUNTED = 66;

  /** Compares two groups of at least one value each. */
  public static Ranks of(Sample first, Sample second) {
    int m = first.size();
    int n = second.size();
    List<Double> all = new ArrayList<>(first.values());
    all.addAll(second.values());
    int[] doubled = doubledRanks(all);
    int sumOfSecond = 0;
    for (int i = m; i < doubled.length; i++) {
      sumOfSecond += doubled[i];
    }
    double won = (sumOfSecond - n * (n + 1)) / 2.0;
    Chance chance =
        m + n <= MOST_COUNTED ? counted(doubled, n, sumOfSecond) : approximate(doubled, m, n, won);
    return new Ranks(won, m * n, chance);
  }

  /** The smaller of both groups' U, as critical values are tabled. */
  public double smaller() {
    return Math.min(pairsWon, pairs - pairsWon);
  }

  /** Twice the rank of each value, so that a shared rank is a whole number too. */
  private static int[] doubledRanks(List<Double> all) {
    List<Double> sorted = new ArrayList<>(all);
    Collections.sort(sorted);
    int[] ranks = new int[all.size()];
    for (int i = 0; i < ranks.length; i++) {
      int below = 0;
      int same = 0;
      for (double value : sorted) {
        below += value < all.get(i) ? 1 : 0;
        same += value == all.get(i) ? 1 : 0;
      }
      ranks[i] = 2 * below + same + 1;
    }
    return ranks;
  }

  /**
   * Counts in how many ways a group of this size has each sum of ranks, value by value (the shift
   * algorithm of Streitberg and Roehmel 1986).
   */
  private static Chance counted(int[] doubled, int size, int seen) {
    int most = java.util.Arrays.stream(doubled).sum();
    long[][] ways = new long[size + 1][most + 1];
    ways[0][0] = 1;
    int taken = 0;
    int reached = 0;
    for (int rank : doubled) {
      taken = Math.min(size, taken + 1);
      reached += rank;
      for (int count = taken; count >= 1; count--) {
        for (int sum = reached; sum >= rank; sum--) {
          ways[count][sum] += ways[count - 1][sum - rank];
        }
      }
    }
    // Twice the distance from the middle, in whole numbers.
    long middle = (long) size * (doubled.length + 1);
    long far = Math.abs(seen - middle);
    long asFar = 0;
    long every = 0;
    for (int sum = 0; sum <= most; sum++) {
      every += ways[size][sum];
      if (Math.abs(sum - middle) >= far) {
        asFar += ways[size][sum];
      }
    }
    return new Chance((double) asFar / every, true);
  }

  /** With correction for equal values and for the steps of U (Siegel 1956). */
  private static Chance approximate(int[] doubled, int m, int n, double won) {
    return Chance.approximate((Math.abs(won - m * n / 2.0) - 0.5) / spread(doubled, m, n));
  }

  /** The standard deviation of U under chance alone, equal values allowed for. */
  private static double spread(int[] doubled, int m, int n) {
    double total = m + n;
    double ties = 0;
    for (int rank : doubled) {
      double same = java.util.Arrays.stream(doubled).filter(r -> r == rank).count();
      ties += same * same - 1;
    }
    double variance = m * n / 12.0 * (total + 1 - ties / (total * (total - 1)));
    return variance > 0 ? Math.sqrt(variance) : Double.MIN_NORMAL;
  }

  /**
   * The normal approximation for groups of any size, to be set beside the exact count. Near where
   * both groups hold eight values or more.
   */
  public static Chance approximate(Sample first, Sample second) {
    List<Double> all = new ArrayList<>(first.values());
    all.addAll(second.values());
    return approximate(
        doubledRanks(all), first.size(), second.size(), of(first, second).pairsWon());
  }
}
