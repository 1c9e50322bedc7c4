package closehand.plan;

import closehand.plan.explain.SingleChanges;
import closehand.plan.explain.SingleChanges.SingleChange;
import closehand.plan.problem.Placements;
import closehand.plan.problem.PlanProblem;
import closehand.plan.problem.Wishes;
import closehand.plan.solve.Budget;
import closehand.plan.solve.ControlPlanSolver;
import closehand.plan.solve.PlanOutcome;
import closehand.plan.supply.Measured;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A plan looked at again after its inputs were measured: the old one, the best one now, and the
 * changes between them one at a time. Moving an action costs what leaving a habit costs, so that
 * only what is worth relearning moves.
 *
 * @param before the plan as it was
 * @param bare its problem with nothing measured
 * @param measured its problem with what was measured
 * @param outcome what the search found now, the price of leaving habits in it
 * @param changes what would move, the change that saves most first
 */
public record Replanned(
    Placements before,
    PlanProblem bare,
    PlanProblem measured,
    PlanOutcome outcome,
    List<SingleChange> changes) {
  /** Copies the list. */
  public Replanned {
    changes = List.copyOf(changes);
  }

  /** Solves again, starting from the old plan. */
  static Replanned of(
      PlanProblem bare,
      Placements before,
      Map<String, Measured> measured,
      int habitPoints,
      Budget budget) {
    PlanProblem now = MeasuredInputs.in(bare, measured);
    Wishes wishes = now.wishes();
    List<Wishes.Habit> habits = new ArrayList<>(wishes.habits());
    before.list().forEach(p -> habits.add(new Wishes.Habit(p.action(), p.slot(), habitPoints)));
    PlanProblem staying =
        now.with(new Wishes(wishes.pins(), wishes.bans(), wishes.mustPlace(), habits));
    PlanOutcome outcome = ControlPlanSolver.solve(staying, budget, Optional.of(before));
    Placements after = outcome.plan().list().isEmpty() ? before : outcome.plan();
    return new Replanned(before, bare, now, outcome, SingleChanges.between(now, before, after));
  }

  /** The same after one of the changes was taken: the others are looked at from there. */
  public Replanned taking(SingleChange change) {
    return new Replanned(
        change.plan(),
        bare,
        measured,
        outcome,
        SingleChanges.between(measured, change.plan(), outcome.plan()));
  }
}
