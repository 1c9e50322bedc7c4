package closehand.plan.solve;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * Chooses the action to decide on next, the one that breaks most in the relaxed plan:
 *
 * <pre>
 * 3 for each partner it clashes with
 * + (what its group really costs - G) / 200 points
 * + 4 x its share of each overloaded limit
 * </pre>
 *
 * and splits it by signature and mode, because clashes and loads depend on nothing else; only when
 * one signature is left, by single placements. Leaving out is a choice of its own.
 */
final class Branching {
  private static final double GROUP_SCALE = 200.0 * Tables.POINT;

  private final Relaxation relaxation;
  private final Tables tables;
  private final double[] score;

  Branching(Relaxation relaxation) {
    this.relaxation = relaxation;
    tables = relaxation.tables;
    score = new double[tables.actions];
  }

  /** The action to decide on, or -1 when every action is settled. */
  int action(Space space, Multipliers m) {
    java.util.Arrays.fill(score, 0);
    clashes();
    conventions(m);
    loads();
    int best = -1;
    double most = -1;
    for (int a = 0; a < tables.actions; a++) {
      if (space.choices(a) > 1) {
        double all = score[a] + 1e-9 * priceWeight(a, m);
        if (all > most) {
          most = all;
          best = a;
        }
      }
    }
    return best;
  }

  private void clashes() {
    int[] chosen = relaxation.chosen;
    for (int a = 0; a < tables.actions; a++) {
      for (long set = tables.partners[a]; set != 0 && chosen[a] >= 0; set &= set - 1) {
        int b = Long.numberOfTrailingZeros(set);
        if (chosen[b] >= 0 && tables.clash(chosen[a], chosen[b])) {
          score[a] += 3;
        }
      }
    }
  }

  private void conventions(Multipliers m) {
    int[] chosen = relaxation.chosen;
    for (int g = 0; g < tables.conventions.groups.size(); g++) {
      long real = -m.groupValue[g];
      for (int a : tables.conventions.members.get(g)) {
        real += chosen[a] < 0 ? m.gammaOut[a] : m.gamma[chosen[a]];
      }
      for (Conventions.Pair pair : tables.conventions.groups.get(g)) {
        real += near(pair);
      }
      for (int a : tables.conventions.members.get(g)) {
        score[a] += Math.max(0, real) / GROUP_SCALE;
      }
    }
    for (Conventions.Pair pair : tables.conventions.loose) {
      score[pair.first()] += near(pair) / GROUP_SCALE;
      score[pair.second()] += near(pair) / GROUP_SCALE;
    }
  }

  private long near(Conventions.Pair pair) {
    int p = relaxation.chosen[pair.first()];
    int q = relaxation.chosen[pair.second()];
    return p < 0 || q < 0 ? 0 : pair.cost(tables.slot[p], tables.slot[q]);
  }

  private void loads() {
    long[] load = new long[tables.loads.count()];
    for (int p : relaxation.chosen) {
      for (int i = 0; p >= 0 && i < tables.loads.row[p].length; i++) {
        load[tables.loads.row[p][i]] += tables.loads.amount[p][i];
      }
    }
    for (int a = 0; a < tables.actions; a++) {
      int p = relaxation.chosen[a];
      for (int i = 0; p >= 0 && i < tables.loads.row[p].length; i++) {
        int l = tables.loads.row[p][i];
        if (load[l] > tables.loads.limit[l]) {
          score[a] += 4.0 * tables.loads.amount[p][i] / Math.max(1, tables.loads.limit[l]);
        }
      }
    }
  }

  /** How much of the price of demands hangs on an action; decides among equals. */
  private double priceWeight(int a, Multipliers m) {
    int p = relaxation.chosen[a];
    return p < 0 ? 0 : relaxation.demandPrice(p, m);
  }

  /** The choices of an action. */
  List<Choice> choices(Space space, int a) {
    Set<Choice> found = new LinkedHashSet<>();
    for (int p = space.first(a); p >= 0; p = space.next(a, p + 1)) {
      found.add(Choice.of(tables.signatures.of[p], tables.placement[p].mode()));
    }
    if (found.size() == 1 && !space.mayBeOut(a)) {
      found.clear();
      for (int p = space.first(a); p >= 0; p = space.next(a, p + 1)) {
        found.add(Choice.of(p));
      }
    }
    List<Choice> all = new ArrayList<>(found);
    if (space.mayBeOut(a)) {
      all.add(Choice.OUT);
    }
    return all;
  }

  /** The least rise of the bound when an action is held to a choice. */
  long rise(Space space, int a, Choice choice) {
    if (choice.out()) {
      return Math.max(0, relaxation.reducedOut(a));
    }
    long least = Tables.NEVER;
    for (int p = space.first(a); p >= 0; p = space.next(a, p + 1)) {
      if (choice.admits(tables, p)) {
        least = Math.min(least, relaxation.reduced(p));
      }
    }
    return Math.max(0, least);
  }
}
