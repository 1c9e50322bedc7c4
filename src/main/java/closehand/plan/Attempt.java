package closehand.plan;

import closehand.plan.demand.Demand;
import closehand.plan.demand.WantedAction;
import closehand.plan.problem.Placements;
import closehand.plan.problem.PlanPricer;
import closehand.plan.problem.PlanProblem;
import closehand.plan.solve.PlanOutcome;

/**
 * One form of a game tried.
 *
 * @param kept how many wishes can be kept in this form
 */
record Attempt(Demand demand, PlanProblem problem, PlanOutcome outcome, long kept) {
  private static final int MUST = 3;

  private long mustsLeftOut() {
    return demand.actions().stream()
        .filter(a -> a.importance() == MUST && outcome.plan().of(a.id()).isEmpty())
        .map(WantedAction::of)
        .distinct()
        .count();
  }

  boolean isBetterThan(Attempt other) {
    boolean possible = outcome.status() != PlanOutcome.Status.IMPOSSIBLE;
    boolean otherPossible = other.outcome.status() != PlanOutcome.Status.IMPOSSIBLE;
    if (possible != otherPossible) {
      return possible;
    }
    if (kept != other.kept) {
      return kept > other.kept;
    }
    long mine = mustsLeftOut();
    long theirs = other.mustsLeftOut();
    return mine != theirs ? mine < theirs : outcome.best() < other.outcome.best();
  }

  /** What was found, with other places of the same cost. */
  PlanOutcome at(Placements plan) {
    return new PlanOutcome(
        plan,
        new PlanPricer(problem).cost(plan),
        outcome.best(),
        outcome.bound(),
        outcome.status(),
        outcome.nodes(),
        outcome.trace());
  }
}
