package closehand.rules;

import java.util.Arrays;
import java.util.List;

/** How often each answer to each fact went together with each leader. */
final class Counts {
  /** What could be mere chance counts as nothing: below so many standard deviations. */
  private static final double DOUBT = 3;

  private final double[][][] joint;

  Counts(List<Domain> domains, int leaders) {
    joint = new double[domains.size()][][];
    for (int i = 0; i < joint.length; i++) {
      joint[i] = new double[domains.get(i).size() + 1][leaders];
    }
  }

  void add(int fact, int answer, int leader, double weight) {
    joint[fact][answer][leader] += weight;
  }

  /**
   * Mutual information in bits. Where ways were drawn, their bias is taken off (Miller 1955), and
   * what could be mere chance is nothing.
   *
   * @param drawn how many ways were drawn; 0 where all were gone through
   */
  double bits(int fact, int drawn) {
    double[][] table = joint[fact];
    double[] ofLeader = new double[table[0].length];
    int answers = 0;
    for (double[] row : table) {
      answers += Arrays.stream(row).sum() > 0 ? 1 : 0;
      for (int leader = 0; leader < row.length; leader++) {
        ofLeader[leader] += row[leader];
      }
    }
    double nats = nats(table, ofLeader);
    if (drawn == 0) {
      return Math.max(0, nats) / StrictMath.log(2);
    }
    // Of unrelated answers, 2 N times this sum is spread like chi-square (Wilks 1938).
    long leaders = Arrays.stream(ofLeader).filter(p -> p > 0).count();
    double freedom = (answers - 1.0) * (leaders - 1.0);
    double excess = nats - freedom / (2.0 * drawn);
    double noise = DOUBT * Math.sqrt(2 * freedom) / (2.0 * drawn);
    return excess > noise ? excess / StrictMath.log(2) : 0;
  }

  private static double nats(double[][] table, double[] ofLeader) {
    double sum = 0;
    for (double[] row : table) {
      double ofAnswer = Arrays.stream(row).sum();
      for (int leader = 0; leader < row.length; leader++) {
        if (row[leader] > 0) {
          sum += row[leader] * StrictMath.log(row[leader] / (ofAnswer * ofLeader[leader]));
        }
      }
    }
    return sum;
  }
}
