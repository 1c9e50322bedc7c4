package closehand.plan.solve;

import java.util.Arrays;

/**
 * The lower bound of a part of the search, for any prices that are 0 or above:
 *
 * <pre>
 * bound = set-up + sum G(g) + assignment(c~, out~) - sum lambda(r) - sum mu(l) limit(l)
 * c~(p) = c(p) + sum of lambda(r) over rows r with p + sum mu(l) amount(p,l) - gamma(p)
 * out~(a) = out(a) - gammaOut(a)
 * </pre>
 *
 * Demands that couple actions (possible together, load) are dropped and paid for instead: breaking
 * one costs its price, keeping one with room to spare earns nothing. Whatever the prices are, the
 * sum is never above the cost of the best plan (Geoffrion 1974). Rounded down where it is rounded.
 *
 * <p>The reduced cost of a placement is how much the bound rises when the placement is forced.
 */
final class Relaxation {
  final Tables tables;
  final ClashRows rows;

  /** The chosen placement of each action in the relaxed plan, -1 where it is left out. */
  final int[] chosen;

  private final Assignment assignment;
  private final long[][] matrix;
  private final int[][] cheapest;
  private final long[] price;
  private final long[] out;
  private final long[][] lambdaOf;
  private final int[] column;
  private int columns;
  private int regime = -1;
  private long bound;

  Relaxation(Tables tables, ClashRows rows) {
    this.tables = tables;
    this.rows = rows;
    int slots = tables.slots.size();
    chosen = new int[tables.actions];
    assignment = new Assignment(tables.actions, slots);
    matrix = new long[tables.actions][slots];
    cheapest = new int[tables.actions][slots];
    price = new long[tables.placement.length];
    out = new long[tables.actions];
    lambdaOf = new long[tables.actions][tables.signatures.count()];
    column = new int[slots];
  }

  Multipliers noMultipliers() {
    return new Multipliers(
        rows.rows.size(),
        tables.loads.count(),
        tables.placement.length,
        tables.actions,
        tables.conventions.groups.size());
  }

  /** Computes the bound, the relaxed plan and the reduced costs. */
  long solve(Space space, Multipliers m) {
    columns(space.regime);
    spreadLambda(m);
    for (int a = 0; a < tables.actions; a++) {
      long[] row = matrix[a];
      Arrays.fill(row, 0, columns, Tables.NEVER);
      for (int p = space.first(a); p >= 0; p = space.next(a, p + 1)) {
        long c = price(p, m);
        price[p] = c;
        int s = column[tables.slot[p]];
        if (c < row[s]) {
          row[s] = c;
          cheapest[a][s] = p;
        }
      }
      out[a] = space.mayBeOut(a) ? tables.leftOut[a] - m.gammaOut[a] : Tables.NEVER;
    }
    addLoose(space);
    long assigned = assignment.solve(matrix, out, columns);
    if (assigned >= Tables.NEVER) {
      bound = Tables.NEVER;
      return bound;
    }
    for (int a = 0; a < tables.actions; a++) {
      int s = assignment.place[a];
      chosen[a] = s == Assignment.LEFT_OUT ? -1 : cheapest[a][s];
    }
    bound = space.regime.setUp() + m.groups() + assigned - paid(m);
    return bound;
  }

  private void columns(Regimes.Regime wanted) {
    if (regime != wanted.number()) {
      regime = wanted.number();
      columns = 0;
      Arrays.fill(column, -1);
      for (int s = wanted.slots().nextSetBit(0); s >= 0; s = wanted.slots().nextSetBit(s + 1)) {
        column[s] = columns++;
      }
    }
  }

  private void spreadLambda(Multipliers m) {
    for (long[] row : lambdaOf) {
      Arrays.fill(row, 0);
    }
    for (int r = 0; r < m.lambda.length; r++) {
      if (m.lambda[r] != 0) {
        ClashRows.Row row = rows.rows.get(r);
        for (int i = 0; i < row.action().length; i++) {
          long[] sums = lambdaOf[row.action()[i]];
          for (long set = row.signatures()[i]; set != 0; set &= set - 1) {
            sums[Long.numberOfTrailingZeros(set)] += m.lambda[r];
          }
        }
      }
    }
  }

  private long price(int p, Multipliers m) {
    long load = 0;
    int[] row = tables.loads.row[p];
    for (int i = 0; i < row.length; i++) {
      load += m.mu[row[i]] * tables.loads.amount[p][i];
    }
    return tables.cost[p]
        + lambdaOf[tables.action[p]][tables.signatures.of[p]]
        + (load >> Multipliers.MU_SHIFT)
        - m.gamma[p];
  }

  /** Pairs outside the groups cost something only once one of the two is settled. */
  private void addLoose(Space space) {
    for (Conventions.Pair pair : tables.conventions.loose) {
      boolean first = space.isSettled(pair.first());
      if (first || space.isSettled(pair.second())) {
        int fixed = space.first(first ? pair.first() : pair.second());
        int open = first ? pair.second() : pair.first();
        for (int p = space.first(open); p >= 0; p = space.next(open, p + 1)) {
          long steps =
              first
                  ? pair.cost(tables.slot[fixed], tables.slot[p])
                  : pair.cost(tables.slot[p], tables.slot[fixed]);
          price[p] += steps;
        }
        rebuild(space, open);
      }
    }
  }

  private void rebuild(Space space, int a) {
    Arrays.fill(matrix[a], 0, columns, Tables.NEVER);
    for (int p = space.first(a); p >= 0; p = space.next(a, p + 1)) {
      int s = column[tables.slot[p]];
      if (price[p] < matrix[a][s]) {
        matrix[a][s] = price[p];
        cheapest[a][s] = p;
      }
    }
  }

  private long paid(Multipliers m) {
    long sum = 0;
    for (long lambda : m.lambda) {
      sum += lambda;
    }
    for (int l = 0; l < m.mu.length; l++) {
      long all = m.mu[l] * tables.loads.limit[l];
      sum += (all + (1L << Multipliers.MU_SHIFT) - 1) >> Multipliers.MU_SHIFT;
    }
    return sum;
  }

  /** How much of the price of a placement is for demands. */
  long demandPrice(int p, Multipliers m) {
    return price[p] + m.gamma[p] - tables.cost[p];
  }

  /** The bound of the last solution. */
  long bound() {
    return bound;
  }

  /** How much the bound rises when this allowed placement is forced. */
  long reduced(int p) {
    int a = tables.action[p];
    return price[p] - assignment.u[a] - assignment.v[column[tables.slot[p]]];
  }

  /** How much the bound rises when this action is forced out; only where it may be. */
  long reducedOut(int a) {
    return out[a] - assignment.u[a];
  }
}
