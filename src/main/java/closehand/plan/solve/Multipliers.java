package closehand.plan.solve;

/**
 * The prices that move a relaxed demand into the costs, all 0 or above except gamma: lambda for
 * each clash row and the value of each group in 1/1024 point, mu for each load row in 1/2^20 point
 * a unit, gamma for what of a placement's cost the groups account for.
 */
final class Multipliers {
  /** Mu counts this many times finer than costs. */
  static final int MU_SHIFT = 10;

  final long[] lambda;
  final long[] mu;
  final long[] gamma;
  final long[] gammaOut;
  final long[] groupValue;

  /** The length of a step, as a share of the gap. */
  double step;

  Multipliers(int rows, int loads, int placements, int actions, int groups) {
    lambda = new long[rows];
    mu = new long[loads];
    gamma = new long[placements];
    gammaOut = new long[actions];
    groupValue = new long[groups];
    step = 1;
  }

  private Multipliers(Multipliers other) {
    lambda = other.lambda.clone();
    mu = other.mu.clone();
    gamma = other.gamma.clone();
    gammaOut = other.gammaOut.clone();
    groupValue = other.groupValue.clone();
    step = other.step;
  }

  Multipliers copy() {
    return new Multipliers(this);
  }

  /** Takes over all prices of another. */
  void become(Multipliers other) {
    System.arraycopy(other.lambda, 0, lambda, 0, lambda.length);
    System.arraycopy(other.mu, 0, mu, 0, mu.length);
    System.arraycopy(other.gamma, 0, gamma, 0, gamma.length);
    System.arraycopy(other.gammaOut, 0, gammaOut, 0, gammaOut.length);
    System.arraycopy(other.groupValue, 0, groupValue, 0, groupValue.length);
    step = other.step;
  }

  long groups() {
    long sum = 0;
    for (long value : groupValue) {
      sum += value;
    }
    return sum;
  }
}
