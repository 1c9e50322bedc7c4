package closehand.plan.explain;

import closehand.plan.problem.Breach;
import closehand.plan.problem.Placement;
import closehand.plan.problem.PlacementRules;
import closehand.plan.problem.Placements;
import closehand.plan.problem.PlanPricer;
import closehand.plan.problem.PlanProblem;
import closehand.plan.solve.Budget;
import closehand.plan.solve.ControlPlanSolver;
import closehand.plan.solve.PlanOutcome;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Why the actions of one plan sit where they sit. */
public final class PlanReasons {
  private static final int MOST_OBSTACLES = 5;

  private final PlanProblem problem;
  private final PlanOutcome outcome;
  private final Budget each;
  private final PlanPricer pricer;

  /**
   * Reasons for an outcome.
   *
   * @param each how hard to look for each answer
   */
  public PlanReasons(PlanProblem problem, PlanOutcome outcome, Budget each) {
    this.problem = problem;
    this.outcome = outcome;
    this.each = each;
    pricer = new PlanPricer(problem);
  }

  /**
   * Why an action sits where it sits, with the next places; empty when it is left out. A pinned
   * action has no next places. Each next place is one more solution with the places before it
   * forbidden, started from the plan that is there.
   */
  public Optional<WhyHere> whyHere(String action, int places) {
    return outcome
        .plan()
        .of(action)
        .map(p -> new WhyHere(p, pricer.rules().cost(p), next(p, places), obstacles(p)));
  }

  private List<Elsewhere> next(Placement here, int places) {
    List<Elsewhere> found = new ArrayList<>();
    if (problem.wishes().pins().stream().anyMatch(p -> p.action().equals(here.action()))) {
      return found;
    }
    PlanProblem without = WishEdits.banned(problem, here);
    for (int i = 0; i < places; i++) {
      PlanOutcome other = ControlPlanSolver.solve(without, each, Optional.of(start(here)));
      Optional<Placement> there = other.plan().of(here.action());
      if (there.isEmpty()) {
        break;
      }
      found.add(elsewhere(there.get(), other));
      without = WishEdits.banned(without, there.get());
    }
    return found;
  }

  private Placements start(Placement without) {
    return new Placements(outcome.plan().list().stream().filter(p -> !p.equals(without)).toList());
  }

  private Elsewhere elsewhere(Placement there, PlanOutcome other) {
    long least = Math.max(0, other.bound() - outcome.best());
    return new Elsewhere(
        there,
        least,
        Math.max(least, other.best() - outcome.best()),
        moved(outcome.plan(), other.plan(), there.action()));
  }

  /** Ids of the actions, one apart, that are not in the same place in both plans. */
  static List<String> moved(Placements before, Placements after, String apart) {
    List<String> ids = new ArrayList<>();
    before.list().forEach(p -> ids.add(p.action()));
    after.list().stream().map(Placement::action).filter(a -> !ids.contains(a)).forEach(ids::add);
    return ids.stream()
        .filter(a -> !a.equals(apart) && !before.of(a).equals(after.of(a)))
        .sorted()
        .toList();
  }

  private List<Obstacle> obstacles(Placement here) {
    PlacementRules rules = pricer.rules();
    long cost = rules.cost(here).total();
    return rules.possible(here.action()).stream()
        .filter(p -> !p.equals(here) && rules.cost(p).total() < cost)
        .map(p -> new Obstacle(p, cost - rules.cost(p).total(), against(here, p)))
        .sorted(
            Comparator.comparingLong(Obstacle::saving)
                .reversed()
                .thenComparing(o -> o.placement().slot().toString()))
        .limit(MOST_OBSTACLES)
        .toList();
  }

  private List<Breach> against(Placement here, Placement there) {
    List<Placement> moved = new ArrayList<>(start(here).list());
    moved.add(there);
    return pricer.price(new Placements(moved)).breaches();
  }

  /** The best plan that places an action which this one leaves out, if any plan can. */
  public Optional<PlanOutcome> placed(String action) {
    PlanOutcome other =
        ControlPlanSolver.solve(
            problem.with(WishEdits.must(problem.wishes(), action)),
            each,
            Optional.of(outcome.plan()));
    return other.plan().of(action).isPresent() ? Optional.of(other) : Optional.empty();
  }
}
