package closehand.plan.solve;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import closehand.plan.problem.PlanPricer;
import closehand.plan.problem.PlanProblem;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** A search that is stopped gives back what it has, at once. */
class StoppingTest {
  /** How often the search may still ask after it was told to stop: once a loop that is left. */
  private static final int FEW = 10;

  @Test
  void aStopIsHeardSoonWhereverItComes() {
    PlanProblem problem = Instances.read("large2");
    for (int after : new int[] {0, 1, 5, 50, 200}) {
      int[] asked = {0};
      PlanOutcome outcome =
          ControlPlanSolver.solve(
              problem, Budget.ORDINARY.stoppedBy(() -> ++asked[0] > after), Optional.empty());
      assertEquals(PlanOutcome.Status.STOPPED, outcome.status());
      assertTrue(asked[0] <= after + FEW, asked[0] + " questions after " + after);
      assertTrue(new PlanPricer(problem).price(outcome.plan()).isAllowed());
      assertTrue(outcome.bound() <= 30_872 && outcome.best() >= 30_872);
    }
  }

  @Test
  void aStopAmongTheLargeDecisionsIsHeardOnceThereAreEnoughOfThem() {
    Tables tables = new Tables(Instances.read("large2"));
    int all = Regimes.of(tables, () -> false).size();
    assertTrue(all > 20, "large decisions: " + all);
    int[] asked = {0};
    int some = Regimes.of(tables, () -> ++asked[0] > 5, 10).size();
    assertTrue(some >= 10 && some < all, some + " of " + all);
    assertEquals(all, Regimes.of(tables, () -> true).size(), "few are always looked at");
  }

  @Test
  void whoeverStopsAtOnceStillGetsAPlan() {
    PlanProblem problem = Instances.read("large2");
    PlanOutcome outcome =
        ControlPlanSolver.solve(problem, Budget.ORDINARY.stoppedBy(() -> true), Optional.empty());
    assertEquals(PlanOutcome.Status.STOPPED, outcome.status());
    assertTrue(outcome.plan().list().size() > 10, "actions: " + outcome.plan().list().size());
  }

  @Test
  void theEndOfTheNodesIsSaidAndThePlanIsStillGiven() {
    PlanProblem problem = Instances.read("t7500");
    PlanOutcome outcome =
        ControlPlanSolver.solve(problem, Budget.ORDINARY.withNodes(30), Optional.empty());
    assertEquals(PlanOutcome.Status.OUT_OF_NODES, outcome.status());
    assertEquals(30, outcome.nodes());
    assertTrue(new PlanPricer(problem).price(outcome.plan()).isAllowed());
    assertTrue(outcome.bound() < outcome.best());
  }
}
