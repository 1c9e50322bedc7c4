package closehand.measure.statistics;

/**
 * How little two phases of one person overlap: the first before a change, the second after it.
 *
 * @param pairs all pairs of one value of each phase
 * @param better pairs in which the second phase's value is higher, less those in which it is lower
 * @param trend how far the first phase rose by itself ({@link Kendall#trend})
 * @param beyond the share of the second phase above every value of the first (Scruggs, Mastropieri
 *     and Casto 1987)
 */
public record Overlap(int pairs, int better, int trend, double beyond) {
  /** Of two phases with at least one value each; more is better. */
  public static Overlap of(Sample first, Sample second) {
    if (first.size() == 0 || second.size() == 0) {
      throw new IllegalArgumentException("at least one value in each phase");
    }
    int better = 0;
    for (double a : first.values()) {
      for (double b : second.values()) {
        better += Integer.signum(Double.compare(b, a));
      }
    }
    double best = Double.NEGATIVE_INFINITY;
    for (double a : first.values()) {
      best = Math.max(best, a);
    }
    double beyond = 0;
    for (double b : second.values()) {
      beyond += b > best ? 1 : 0;
    }
    return new Overlap(
        first.size() * second.size(), better, Kendall.trend(first), beyond / second.size());
  }

  /** From -1 to 1 (Parker, Vannest, Davis and Sauber 2011). */
  public double tau() {
    return (double) better / pairs;
  }

  /** The share of pairs won, equal ones counting half, 0 to 1 (Parker and Vannest 2009). */
  public double wonShare() {
    return (tau() + 1) / 2;
  }

  /**
   * The same as {@link #tau} less what the first phase was already gaining by itself (Tau-U; Parker
   * and others 2011, read as in Tarlow 2017: the trend is taken away). It can lie below -1.
   */
  public double tauLessTrend() {
    return (double) (better - trend) / pairs;
  }
}
