package closehand.plan;

import closehand.plan.demand.Demand;
import closehand.plan.problem.PlanProblem;
import closehand.plan.solve.PlanOutcome;
import closehand.plan.supply.Supply;

/**
 * A plan with everything it was made from, so that questions about it can be answered.
 *
 * @param plan the plan for people
 * @param supply what the player can work
 * @param demand what the game asks
 * @param problem both together
 * @param outcome what the search found
 */
public record Planned(
    ControlPlan plan, Supply supply, Demand demand, PlanProblem problem, PlanOutcome outcome) {

  /** The same with other words about it. */
  public Planned told(ControlPlan other) {
    return new Planned(other, supply, demand, problem, outcome);
  }
}
