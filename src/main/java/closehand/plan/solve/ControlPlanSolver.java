package closehand.plan.solve;

import closehand.bank.Problem;
import closehand.bank.Where;
import closehand.plan.problem.Placements;
import closehand.plan.problem.PlanCheck;
import closehand.plan.problem.PlanPricer;
import closehand.plan.problem.PlanProblem;
import java.util.List;
import java.util.Optional;

/** Finds the best plan of a problem and proves it, or says how far it can be from the best. */
public final class ControlPlanSolver {
  private ControlPlanSolver() {}

  /**
   * The best plan within a budget; the same problem, budget and previous plan give the same answer
   * on every machine unless stopped.
   *
   * @param problem a problem that passes {@link PlanCheck}; anything else is a mistake of the
   *     caller
   * @param budget how hard to look
   * @param previous a plan to start from, such as the one before a small change
   */
  public static PlanOutcome solve(
      PlanProblem problem, Budget budget, Optional<Placements> previous) {
    List<Problem> wrong = PlanCheck.check(problem, Where.file("plan"));
    if (Problem.anyError(wrong)) {
      throw new IllegalArgumentException(wrong.get(0).code() + " at " + wrong.get(0).where());
    }
    Tables tables = new Tables(problem);
    Search search = new Search(tables, budget);
    search.run(previous.map(tables::chosen));
    return outcome(problem, tables, search);
  }

  /**
   * Of all plans that cost as little as a proved one, the first in an order of places that does not
   * depend on how the problem was written down; several plans of equal cost are common. Costs some
   * dozens of solutions; where the budget does not suffice for one of them the plan stays as it is
   * from there on.
   *
   * @param outcome a proved outcome of the problem; any other is given back as it is
   * @param each how hard to look for each of the solutions
   */
  public static PlanOutcome settleTies(PlanProblem problem, PlanOutcome outcome, Budget each) {
    if (outcome.status() != PlanOutcome.Status.PROVED) {
      return outcome;
    }
    Placements plan = new TieBreak(new Tables(problem), each).first(outcome.plan(), outcome.best());
    return new PlanOutcome(
        plan,
        new PlanPricer(problem).price(plan).cost(),
        outcome.best(),
        outcome.bound(),
        outcome.status(),
        outcome.nodes(),
        outcome.trace());
  }

  private static PlanOutcome outcome(PlanProblem problem, Tables tables, Search search) {
    Best best = search.best();
    Placements plan = best.isFound() ? tables.plan(best.chosen()) : Placements.NONE;
    var cost = new PlanPricer(problem).price(plan).cost();
    long bound = best.isFound() ? Math.min(search.bound(), cost.total()) : search.bound();
    return new PlanOutcome(
        plan,
        cost,
        cost.total(),
        bound,
        status(search, cost.total() - bound),
        search.nodes(),
        search.trace());
  }

  private static PlanOutcome.Status status(Search search, long gap) {
    if (search.isDone()) {
      if (!search.best().isFound()) {
        return PlanOutcome.Status.IMPOSSIBLE;
      }
      return gap == 0 ? PlanOutcome.Status.PROVED : PlanOutcome.Status.NEAR_ENOUGH;
    }
    return search.isStopped() ? PlanOutcome.Status.STOPPED : PlanOutcome.Status.OUT_OF_NODES;
  }
}
