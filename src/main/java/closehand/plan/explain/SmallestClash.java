package closehand.plan.explain;

import closehand.plan.problem.Body;
import closehand.plan.problem.CoPress;
import closehand.plan.problem.Effector;
import closehand.plan.problem.PlanProblem;
import closehand.plan.problem.Play;
import closehand.plan.problem.Wishes;
import closehand.plan.solve.Budget;
import closehand.plan.solve.ControlPlanSolver;
import closehand.plan.solve.PlanOutcome;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * The smallest set of demands that cannot be kept together, by leaving out one after the other: if
 * it is still impossible without a demand, the demand is not needed for the clash (deletion filter,
 * Chinneck and Dravnieks 1991). No demand of the set can be spared; a smaller set of others may
 * exist.
 */
public final class SmallestClash {
  private static final int ANY_PLAN = 10_000;

  private final PlanProblem problem;
  private final Budget each;

  private SmallestClash(PlanProblem problem, Budget each) {
    this.problem = problem;
    this.each = each.withTolerance(ANY_PLAN);
  }

  /**
   * The demands that clash; none when they can be kept together or when the budget is too small to
   * tell.
   */
  public static List<Demand> of(PlanProblem problem, Budget each) {
    SmallestClash clash = new SmallestClash(problem, each);
    List<Demand> kept = new ArrayList<>(clash.demands());
    if (!clash.isImpossible(kept)) {
      return List.of();
    }
    for (Demand demand : List.copyOf(kept)) {
      List<Demand> fewer = new ArrayList<>(kept);
      fewer.remove(demand);
      if (clash.isImpossible(fewer)) {
        kept = fewer;
      }
    }
    return List.copyOf(kept);
  }

  /** Whether some plan keeps all of these demands. */
  public static boolean canBeKept(PlanProblem problem, List<Demand> demands, Budget each) {
    return !new SmallestClash(problem, each).isImpossible(demands);
  }

  private List<Demand> demands() {
    List<Demand> all = new ArrayList<>();
    problem.body().effectors().forEach(e -> all.add(new Demand.LoadLimit(e.id())));
    all.add(new Demand.MostParts());
    problem.play().coPresses().stream()
        .filter(c -> isForced(c.first()) && isForced(c.second()))
        .forEach(c -> all.add(new Demand.Together(c.first(), c.second())));
    problem.wishes().mustPlace().stream()
        .sorted()
        .forEach(a -> all.add(new Demand.MustBePlaced(a)));
    problem.wishes().pins().forEach(p -> all.add(new Demand.Pinned(p.action())));
    return all;
  }

  private boolean isForced(String action) {
    return problem.wishes().mustPlace().contains(action)
        || problem.wishes().pins().stream().anyMatch(p -> p.action().equals(action));
  }

  private boolean isImpossible(List<Demand> kept) {
    PlanOutcome outcome = ControlPlanSolver.solve(reduced(kept), each, Optional.empty());
    return outcome.status() == PlanOutcome.Status.IMPOSSIBLE;
  }

  /** The problem with only these demands and only the actions they are about. */
  private PlanProblem reduced(List<Demand> kept) {
    Set<String> must = new HashSet<>();
    Set<String> pinned = new HashSet<>();
    Set<String> limited = new HashSet<>();
    List<CoPress> together = new ArrayList<>();
    boolean parts = false;
    for (Demand demand : kept) {
      if (demand instanceof Demand.MustBePlaced m) {
        must.add(m.action());
      } else if (demand instanceof Demand.Pinned p) {
        pinned.add(p.action());
      } else if (demand instanceof Demand.LoadLimit l) {
        limited.add(l.effector());
      } else if (demand instanceof Demand.Together t) {
        together.add(new CoPress(t.first(), t.second()));
      } else {
        parts = true;
      }
    }
    Wishes w = problem.wishes();
    List<Wishes.Pin> pins = w.pins().stream().filter(p -> pinned.contains(p.action())).toList();
    PlanProblem changed =
        problem
            .with(new Play(problem.play().actions(), together, List.of()))
            .with(new Wishes(pins, w.bans(), must, List.of()))
            .with(body(limited))
            .with(
                problem.equipment().withMostParts(parts ? problem.equipment().mostParts() : 1000));
    for (var action : problem.play().actions()) {
      if (!must.contains(action.id()) && !pinned.contains(action.id())) {
        changed = ProblemEdits.without(changed, action.id());
      }
    }
    return changed;
  }

  private Body body(Set<String> limited) {
    Effector.LoadLimit none = new Effector.LoadLimit(Integer.MAX_VALUE, Integer.MAX_VALUE);
    List<Effector> effectors =
        problem.body().effectors().stream()
            .map(
                e ->
                    new Effector(
                        e.id(),
                        e.name(),
                        e.usable(),
                        limited.contains(e.id()) ? e.limit() : none,
                        Optional.empty()))
            .toList();
    return new Body(effectors, problem.body().coupled());
  }
}
