package closehand.plan.solve;

import java.util.Arrays;

/**
 * The exact cost of a group of actions that want to lie near each other. The assignment knows
 * nothing of nearness; a group is small enough to look at all its joint placements:
 *
 * <pre>
 * G(g) = min over joint placements of  sum gamma(p) + sum weight * steps
 * </pre>
 *
 * Gamma is what of a placement's cost the group accounts for and the assignment does not. A pass
 * (1) moves the reduced costs of the assignment into gamma, which leaves the assignment as it is;
 * (2) finds G and for each placement m(p), the least cost of a joint placement with it, among those
 * that could still be part of a better plan; (3) takes away placements without any; (4) hands the
 * spare part back, gamma(p) -= (m(p) - G) / |g|, so that no joint placement falls below G. The
 * bound never falls.
 *
 * <p>A Lagrangean decomposition (Guignard and Kim 1987): both parts hold a copy of the placements
 * of the group, and gamma is the price of the copies differing.
 */
final class GroupBound {
  private static final int MOST_STEPS = 60_000;

  private final Tables tables;
  private final Relaxation relaxation;
  private final long[] least;
  private final long[] leastOut;
  private final long[] gamma;
  private final long[] gammaOut;
  private int steps;
  private long limit;
  private long bestValue;
  private int[] members = {};
  private Conventions.Pair[][] pairsAt = {};
  private long[] rest = {};
  private int[][] options = {};
  private int[] now = {};

  GroupBound(Relaxation relaxation) {
    this.relaxation = relaxation;
    tables = relaxation.tables;
    least = new long[tables.placement.length];
    leastOut = new long[tables.actions];
    gamma = new long[tables.placement.length];
    gammaOut = new long[tables.actions];
  }

  /**
   * One pass over all groups, from the last solution of the relaxation.
   *
   * @param best what a better plan must stay below or at
   * @return the new bound; {@link Tables#NEVER} when no better plan is left here
   */
  long pass(Space space, Multipliers m, long best) {
    long bound = relaxation.bound();
    for (int g = 0; g < tables.conventions.groups.size(); g++) {
      members = tables.conventions.members.get(g);
      long slack = best - (bound - m.groupValue[g]);
      if (search(space, m, g, slack)) {
        if (bestValue >= Tables.NEVER) {
          return Tables.NEVER;
        }
        bound += bestValue - m.groupValue[g];
        m.groupValue[g] = bestValue;
        handBack(space, m);
      }
    }
    return bound;
  }

  /** Looks at all joint placements within the slack; false when there are too many. */
  private boolean search(Space space, Multipliers m, int g, long slack) {
    limit = slack;
    steps = 0;
    bestValue = Tables.NEVER;
    int n = members.length;
    options = new int[n][];
    rest = new long[n + 1];
    now = new int[n];
    for (int i = 0; i < n; i++) {
      int a = members[i];
      options[i] = options(space, m, a);
      if (options[i].length == 0) {
        return true;
      }
    }
    for (int i = n - 1; i >= 0; i--) {
      rest[i] = rest[i + 1] + value(members[i], options[i][0]);
    }
    pairsAt = new Conventions.Pair[n][];
    for (int i = 0; i < n; i++) {
      pairsAt[i] = pairsEndingAt(g, i);
    }
    deepen(0, 0);
    return steps <= MOST_STEPS;
  }

  private int[] options(Space space, Multipliers m, int a) {
    int[] found = new int[space.choices(a)];
    int n = 0;
    for (int p = space.first(a); p >= 0; p = space.next(a, p + 1)) {
      gamma[p] = m.gamma[p] + relaxation.reduced(p);
      least[p] = Tables.NEVER;
      found[n++] = p;
    }
    if (space.mayBeOut(a)) {
      gammaOut[a] = m.gammaOut[a] + relaxation.reducedOut(a);
      leastOut[a] = Tables.NEVER;
      found[n] = -1;
    }
    return Sorting.by(found, p -> value(a, p));
  }

  private long value(int a, int p) {
    return p < 0 ? gammaOut[a] : gamma[p];
  }

  private Conventions.Pair[] pairsEndingAt(int g, int i) {
    return tables.conventions.groups.get(g).stream()
        .filter(p -> Math.max(position(p.first()), position(p.second())) == i)
        .toArray(Conventions.Pair[]::new);
  }

  private int position(int a) {
    return Arrays.binarySearch(members, a);
  }

  private void deepen(int i, long sum) {
    if (i == members.length) {
      note(sum);
      return;
    }
    for (int p : options[i]) {
      long value = sum + value(members[i], p);
      if (value + rest[i + 1] > limit) {
        return;
      }
      if (++steps > MOST_STEPS) {
        return;
      }
      if (p < 0 || fits(i, p)) {
        now[i] = p;
        long all = value + near(i);
        if (all + rest[i + 1] <= limit) {
          deepen(i + 1, all);
        }
      }
    }
  }

  private boolean fits(int i, int p) {
    for (int j = 0; j < i; j++) {
      if (now[j] >= 0 && tables.clash(now[j], p)) {
        return false;
      }
    }
    return true;
  }

  private long near(int i) {
    long sum = 0;
    for (Conventions.Pair pair : pairsAt[i]) {
      int p = now[position(pair.first())];
      int q = now[position(pair.second())];
      if (p >= 0 && q >= 0) {
        sum += pair.cost(tables.slot[p], tables.slot[q]);
      }
    }
    return sum;
  }

  private void note(long sum) {
    bestValue = Math.min(bestValue, sum);
    for (int j = 0; j < now.length; j++) {
      if (now[j] >= 0) {
        least[now[j]] = Math.min(least[now[j]], sum);
      } else {
        leastOut[members[j]] = Math.min(leastOut[members[j]], sum);
      }
    }
  }

  private void handBack(Space space, Multipliers m) {
    for (int a : members) {
      for (int p = space.first(a); p >= 0; p = space.next(a, p + 1)) {
        if (least[p] >= Tables.NEVER) {
          space.remove(p);
        } else {
          m.gamma[p] = gamma[p] - (least[p] - bestValue) / members.length;
        }
      }
      if (space.mayBeOut(a)) {
        if (leastOut[a] >= Tables.NEVER) {
          space.removeOut(a);
        } else {
          m.gammaOut[a] = gammaOut[a] - (leastOut[a] - bestValue) / members.length;
        }
      }
    }
  }
}
