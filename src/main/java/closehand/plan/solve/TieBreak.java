package closehand.plan.solve;

import closehand.plan.problem.Action;
import closehand.plan.problem.Input;
import closehand.plan.problem.Placement;
import closehand.plan.problem.Placements;
import java.util.BitSet;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * Chooses among plans of equal cost. For each action, the most important first and then by id: is
 * there a plan that costs no more with this action on an earlier place and all actions before it as
 * they are settled? If so go on from that plan, until there is none. Places are in the order of
 * device, row, column, input, layer and mode; being left out comes last. The result is the first
 * plan of all in this order, so it does not depend on the order of actions or inputs in the
 * problem.
 */
final class TieBreak {
  private final Tables tables;
  private final Budget each;
  private final int[] rank;

  TieBreak(Tables tables, Budget each) {
    this.tables = tables;
    this.each = each;
    rank = ranks();
  }

  private int[] ranks() {
    Map<String, Input> inputs = new HashMap<>();
    tables.problem.equipment().inputs().forEach(i -> inputs.put(i.id(), i));
    Comparator<Placement> order =
        Comparator.<Placement, Input>comparing(
                p ->
                    inputs.getOrDefault(
                        p.slot().input(), tables.problem.equipment().inputs().get(0)),
                Comparator.comparing(Input::device)
                    .thenComparingInt(Input::row)
                    .thenComparingInt(Input::column)
                    .thenComparing(Input::id))
            .thenComparing(p -> p.slot().layer().orElse(""))
            .thenComparing(Placement::mode);
    List<Integer> sorted =
        IntStream.range(0, tables.placement.length)
            .boxed()
            .sorted((p, q) -> order.compare(tables.placement[p], tables.placement[q]))
            .toList();
    int[] ranks = new int[sorted.size()];
    for (int r = 0; r < ranks.length; r++) {
      ranks[sorted.get(r)] = r;
    }
    return ranks;
  }

  /** The first of all plans that cost as little as this one. */
  Placements first(Placements plan, long points) {
    int[] chosen = tables.chosen(plan);
    BitSet among = new BitSet();
    among.set(0, tables.placement.length);
    long must = 0;
    Budget budget = each.withTolerance(0).withCutoff(points);
    for (int a : order()) {
      BitSet earlier = narrow(among, a, chosen[a]);
      while (!earlier.isEmpty()) {
        Search search = new Search(tables, budget, earlier, must | 1L << a);
        search.withoutShaking();
        search.run(Optional.empty());
        if (!search.isDone() && !search.best().isFound()) {
          return tables.plan(chosen);
        }
        if (!search.best().isFound()) {
          break;
        }
        chosen = search.best().chosen();
        earlier = narrow(among, a, chosen[a]);
      }
      among.clear(tables.first[a], tables.first[a + 1]);
      if (chosen[a] >= 0) {
        among.set(chosen[a]);
        must |= 1L << a;
      }
    }
    return tables.plan(chosen);
  }

  /** What is left when an action must be earlier than it is; nothing when it cannot be. */
  private BitSet narrow(BitSet among, int a, int now) {
    BitSet narrowed = (BitSet) among.clone();
    for (int p = tables.first[a]; p < tables.first[a + 1]; p++) {
      narrowed.set(p, among.get(p) && (now < 0 || rank[p] < rank[now]));
    }
    int any = narrowed.nextSetBit(tables.first[a]);
    return any >= 0 && any < tables.first[a + 1] ? narrowed : new BitSet();
  }

  private int[] order() {
    List<Action> actions = tables.problem.play().actions();
    return IntStream.range(0, actions.size())
        .boxed()
        .sorted(
            Comparator.<Integer>comparingInt(a -> -actions.get(a).importance())
                .thenComparing(a -> actions.get(a).id()))
        .mapToInt(Integer::intValue)
        .toArray();
  }
}
