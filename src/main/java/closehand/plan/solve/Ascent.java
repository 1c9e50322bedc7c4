package closehand.plan.solve;

/**
 * Moves the prices to where the bound is higher, by subgradient steps (Held, Wolfe and Crowder
 * 1974): a demand that the relaxed plan breaks becomes dearer, one kept with room to spare cheaper.
 *
 * <pre>
 * step = theta (min(best, 1.5 bound) - bound) / |g|^2,   price = max(0, price + step g)
 * </pre>
 *
 * Loads are scaled by their limit so that all rows are alike. Every node begins with long steps
 * (theta about 1) from the prices of its parent: measured, short inherited steps left gaps of a
 * tenth of a per cent open for thousands of nodes. Theta shrinks after six steps in a row that
 * gained nothing. The lengths are floating-point numbers of the exact operations + - * / only, the
 * prices whole numbers, so every machine comes to the same bound.
 */
final class Ascent {
  private static final int IDLE = 6;
  private static final double SHRINK = 0.6;

  private final Tables tables;
  private final ClashRows rows;
  private final double[] rowGradient;
  private final double[] loadGradient;
  private int idle;

  Ascent(Tables tables, ClashRows rows) {
    this.tables = tables;
    this.rows = rows;
    rowGradient = new double[rows.rows.size()];
    loadGradient = new double[tables.loads.count()];
  }

  void begin() {
    idle = 0;
  }

  /** Tells whether the last step gained, so that steps can become shorter. */
  void gained(boolean better, Multipliers m) {
    idle = better ? 0 : idle + 1;
    if (idle >= IDLE) {
      m.step *= SHRINK;
      idle = 0;
    }
  }

  /** One step from a relaxed plan; false when the plan keeps all demands that have a price. */
  boolean step(Multipliers m, int[] chosen, long bound, long best) {
    double norm = gradient(m, chosen);
    if (norm == 0) {
      return false;
    }
    double target = Math.min((double) best, bound + Math.abs(bound) * 0.5);
    double t = m.step * Math.max(target - bound, Tables.POINT) / norm;
    for (int r = 0; r < rowGradient.length; r++) {
      if (rowGradient[r] != 0) {
        m.lambda[r] = Math.max(0, m.lambda[r] + (long) (t * rowGradient[r]));
      }
    }
    for (int l = 0; l < loadGradient.length; l++) {
      if (loadGradient[l] != 0) {
        double fine = (1L << Multipliers.MU_SHIFT) / (double) Math.max(1, tables.loads.limit[l]);
        long mu = Math.max(0, m.mu[l] + (long) (t * loadGradient[l] * fine));
        m.mu[l] =
            tables.loads.isHard(l)
                ? mu
                : Math.min(mu, tables.loads.price[l] << Multipliers.MU_SHIFT);
      }
    }
    return true;
  }

  private double gradient(Multipliers m, int[] chosen) {
    double norm = 0;
    for (int r = 0; r < rowGradient.length; r++) {
      ClashRows.Row row = rows.rows.get(r);
      int count = -1;
      for (int i = 0; i < row.action().length; i++) {
        int p = chosen[row.action()[i]];
        if (p >= 0 && (row.signatures()[i] >> tables.signatures.of[p] & 1) != 0) {
          count++;
        }
      }
      rowGradient[r] = count < 0 && m.lambda[r] == 0 ? 0 : count;
      norm += rowGradient[r] * rowGradient[r];
    }
    java.util.Arrays.fill(loadGradient, 0);
    for (int p : chosen) {
      if (p >= 0) {
        for (int i = 0; i < tables.loads.row[p].length; i++) {
          loadGradient[tables.loads.row[p][i]] += tables.loads.amount[p][i];
        }
      }
    }
    for (int l = 0; l < loadGradient.length; l++) {
      double over = loadGradient[l] - tables.loads.limit[l];
      boolean idleRow = over < 0 && m.mu[l] == 0;
      loadGradient[l] = idleRow ? 0 : over / Math.max(1, tables.loads.limit[l]);
      norm += loadGradient[l] * loadGradient[l];
    }
    return norm;
  }

  /** Drops the price of rows that only one action can still touch: they can no longer be broken. */
  void dropIdleRows(Space space, Multipliers m) {
    long[] signatures = new long[tables.actions];
    for (int a = 0; a < signatures.length; a++) {
      signatures[a] = space.signatures(a);
    }
    for (int r = 0; r < m.lambda.length; r++) {
      if (m.lambda[r] != 0) {
        ClashRows.Row row = rows.rows.get(r);
        int touched = 0;
        for (int i = 0; i < row.action().length; i++) {
          touched += (row.signatures()[i] & signatures[row.action()[i]]) != 0 ? 1 : 0;
        }
        m.lambda[r] = touched < 2 ? 0 : m.lambda[r];
      }
    }
  }
}
