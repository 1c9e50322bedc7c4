package closehand.plan.solve;

import closehand.plan.problem.Convention;
import closehand.plan.problem.PlanPricer;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Wishes about two actions lying near each other, as numbers. Pairs that hang together form a group
 * of at most five actions; where a group would be larger, its lightest pairs stay loose and are
 * only counted once one of their actions is settled.
 */
final class Conventions {
  private static final int LARGEST_GROUP = 5;

  /** Two actions, and what their places cost: weight times steps, in 1/1024 point. */
  record Pair(int first, int second, long weight, byte[][] steps) {
    long cost(int firstSlot, int secondSlot) {
      return weight * steps[firstSlot][secondSlot];
    }
  }

  /** Every pair. */
  final List<Pair> pairs;

  /** Pairs inside groups. */
  final List<List<Pair>> groups = new ArrayList<>();

  /** The actions of each group. */
  final List<int[]> members = new ArrayList<>();

  /** Pairs outside groups. */
  final List<Pair> loose = new ArrayList<>();

  /** The pairs of each action. */
  final List<List<Pair>> ofAction = new ArrayList<>();

  Conventions(Tables tables) {
    pairs = pairs(tables);
    for (int a = 0; a < tables.actions; a++) {
      int action = a;
      ofAction.add(
          pairs.stream().filter(p -> p.first() == action || p.second() == action).toList());
    }
    group(tables.actions);
  }

  private static List<Pair> pairs(Tables tables) {
    Map<String, Integer> index = new HashMap<>();
    tables.problem.play().actions().forEach(a -> index.put(a.id(), index.size()));
    PlanPricer pricer = new PlanPricer(tables.problem);
    Map<Convention.Kind, byte[][]> steps = new HashMap<>();
    List<Pair> found = new ArrayList<>();
    for (Convention c : tables.problem.play().conventions()) {
      if (c.weightPoints() > 0) {
        found.add(
            new Pair(
                index.getOrDefault(c.first(), -1),
                index.getOrDefault(c.second(), -1),
                Tables.POINT * c.weightPoints(),
                steps.computeIfAbsent(c.kind(), k -> steps(tables, pricer, k))));
      }
    }
    return List.copyOf(found);
  }

  private static byte[][] steps(Tables tables, PlanPricer pricer, Convention.Kind kind) {
    int n = tables.slots.size();
    byte[][] table = new byte[n][n];
    for (int s = 0; s < n; s++) {
      for (int t = 0; t < n; t++) {
        table[s][t] = (byte) pricer.steps(kind, tables.slots.get(s), tables.slots.get(t));
      }
    }
    return table;
  }

  private void group(int actions) {
    int[] root = new int[actions];
    int[] size = new int[actions];
    for (int a = 0; a < actions; a++) {
      root[a] = a;
      size[a] = 1;
    }
    for (Pair pair :
        pairs.stream().sorted(Comparator.comparingLong(Pair::weight).reversed()).toList()) {
      int r = root[pair.first()];
      int s = root[pair.second()];
      if (r != s && size[r] + size[s] <= LARGEST_GROUP) {
        for (int a = 0; a < actions; a++) {
          root[a] = root[a] == s ? r : root[a];
        }
        size[r] += size[s];
      }
    }
    for (int r = 0; r < actions; r++) {
      int group = r;
      List<Pair> inside =
          pairs.stream()
              .filter(p -> root[p.first()] == group && root[p.second()] == group)
              .toList();
      if (!inside.isEmpty()) {
        groups.add(inside);
        members.add(
            java.util.stream.IntStream.range(0, actions).filter(a -> root[a] == group).toArray());
      }
    }
    pairs.stream().filter(p -> root[p.first()] != root[p.second()]).forEach(loose::add);
  }

  /** What the places of all chosen placements cost together. */
  long cost(Tables tables, int[] chosen) {
    long sum = 0;
    for (Pair pair : pairs) {
      int p = chosen[pair.first()];
      int q = chosen[pair.second()];
      if (p >= 0 && q >= 0) {
        sum += pair.cost(tables.slot[p], tables.slot[q]);
      }
    }
    return sum;
  }
}
