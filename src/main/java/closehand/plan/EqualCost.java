package closehand.plan;

import closehand.plan.problem.Placement;
import closehand.plan.problem.Placements;
import closehand.plan.problem.PlanPricer;
import closehand.plan.problem.PlanProblem;
import closehand.plan.problem.Pricing;
import closehand.plan.problem.Slot;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.ToDoubleFunction;

/**
 * Breaks ties between plans of equal cost: from the plan found it goes, while that makes something
 * else smaller, to a plan of the same cost in which one action moves or two change places.
 *
 * <p>The cost never changes, so what was proved of it stays proved. The order of looking is fixed.
 */
final class EqualCost {
  /** Enough for any tie seen; more would only take time. */
  private static final int MOST_STEPS = 8;

  private final PlanPricer pricer;
  private final ToDoubleFunction<Placements> other;
  private final Map<String, List<Placement>> possible = new TreeMap<>();

  private EqualCost(PlanProblem problem, ToDoubleFunction<Placements> other) {
    this.pricer = new PlanPricer(problem);
    this.other = other;
    problem.play().actions().forEach(a -> possible.put(a.id(), pricer.rules().possible(a.id())));
  }

  /**
   * The plan with the least of something else that can be reached at the same cost.
   *
   * @param found an allowed plan
   * @param other what is to be small
   */
  static Placements least(
      PlanProblem problem, Placements found, ToDoubleFunction<Placements> other) {
    EqualCost ties = new EqualCost(problem, other);
    Placements plan = found;
    for (int step = 0; step < MOST_STEPS; step++) {
      Placements next = ties.step(plan);
      if (next.equals(plan)) {
        return plan;
      }
      plan = next;
    }
    return plan;
  }

  private Placements step(Placements plan) {
    Pricing now = pricer.price(plan);
    if (!now.isAllowed()) {
      return plan;
    }
    Placements best = plan;
    double least = other.applyAsDouble(plan);
    for (Placements neighbour : neighbours(plan)) {
      boolean tied = pricer.cost(neighbour).total() == now.cost().total();
      if (tied && pricer.price(neighbour).isAllowed()) {
        double much = other.applyAsDouble(neighbour);
        // A difference in the last digits is no difference.
        if (much < least * (1 - 1e-9)) {
          least = much;
          best = neighbour;
        }
      }
    }
    return best;
  }

  private List<Placements> neighbours(Placements plan) {
    List<Placements> neighbours = new ArrayList<>();
    List<Placement> list = plan.list();
    for (int i = 0; i < list.size(); i++) {
      Placement one = list.get(i);
      for (Placement moved : places(one.action())) {
        if (list.stream().noneMatch(p -> p.slot().equals(moved.slot()))) {
          neighbours.add(with(list, i, moved));
        }
      }
      for (int j = i + 1; j < list.size(); j++) {
        swap(list, i, j, neighbours);
      }
    }
    return neighbours;
  }

  private void swap(List<Placement> list, int i, int j, List<Placements> neighbours) {
    for (Placement one : on(list.get(i).action(), list.get(j).slot())) {
      for (Placement two : on(list.get(j).action(), list.get(i).slot())) {
        List<Placement> swapped = new ArrayList<>(list);
        swapped.set(i, one);
        swapped.set(j, two);
        neighbours.add(new Placements(swapped));
      }
    }
  }

  private static Placements with(List<Placement> list, int place, Placement moved) {
    List<Placement> changed = new ArrayList<>(list);
    changed.set(place, moved);
    return new Placements(changed);
  }

  private List<Placement> places(String action) {
    return possible.getOrDefault(action, List.of());
  }

  private List<Placement> on(String action, Slot slot) {
    return places(action).stream().filter(p -> p.slot().equals(slot)).toList();
  }
}
