package closehand.plan;

import closehand.plan.ControlPlan.RunnerUp;
import closehand.plan.problem.Placement;
import closehand.plan.problem.PlacementRules;
import closehand.plan.problem.Placements;
import closehand.plan.problem.PlanPricer;
import closehand.plan.problem.PlanProblem;
import closehand.plan.problem.Pricing;
import closehand.plan.problem.Slot;
import closehand.plan.supply.SuppliedInput;
import closehand.plan.supply.Supply;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The next best places of each action, with everything else staying where it is: a free input, or
 * one whose action changes places with it. The rest is not planned anew, so the true extra cost is
 * at most what is said.
 */
final class RunnersUp {
  private static final int NAMED = 2;
  private static final int TRIED = 12;

  private final Supply supply;
  private final Placements plan;
  private final PlanPricer pricer;
  private final PlacementRules rules;
  private final long cost;
  private final Map<Slot, Placement> taken = new HashMap<>();

  RunnersUp(PlanProblem problem, Supply supply, Placements plan) {
    this.supply = supply;
    this.plan = plan;
    this.pricer = new PlanPricer(problem);
    this.rules = pricer.rules();
    this.cost = pricer.price(plan).cost().total();
    plan.list().forEach(p -> taken.put(p.slot(), p));
  }

  /** The two places that cost least beside the one taken. */
  List<RunnerUp> of(Placement placed) {
    List<RunnerUp> found = new ArrayList<>();
    rules.possible(placed.action()).stream()
        .filter(p -> !p.slot().equals(placed.slot()))
        .sorted(Comparator.comparingLong(p -> rules.cost(p).total()))
        .limit(TRIED)
        .forEach(
            p -> extra(placed, p).ifPresent(e -> found.add(new RunnerUp(path(p), effector(p), e))));
    return found.stream()
        .sorted(Comparator.comparingLong(RunnerUp::extra).thenComparing(RunnerUp::input))
        .filter(new Once()::isFirst)
        .limit(NAMED)
        .toList();
  }

  private String path(Placement placement) {
    return supply
        .input(placement.slot().input())
        .map(SuppliedInput::path)
        .orElse(placement.slot().input());
  }

  private String effector(Placement placement) {
    return supply.input(placement.slot().input()).map(SuppliedInput::effector).orElse("");
  }

  private Optional<Long> extra(Placement from, Placement to) {
    List<Placement> list = new ArrayList<>(plan.list());
    list.remove(from);
    list.add(to);
    Placement other = taken.get(to.slot());
    if (other != null) {
      list.remove(other);
      Placement swapped = new Placement(other.action(), from.slot(), other.mode());
      if (rules.refusal(swapped).isPresent()) {
        return Optional.empty();
      }
      list.add(swapped);
    }
    Pricing pricing = pricer.price(new Placements(list));
    return pricing.isAllowed() ? Optional.of(pricing.cost().total() - cost) : Optional.empty();
  }

  /** Lets the first of each input through. */
  private static final class Once {
    private final java.util.Set<String> seen = new java.util.HashSet<>();

    boolean isFirst(RunnerUp one) {
      return seen.add(one.input());
    }
  }
}
