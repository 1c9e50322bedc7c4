package closehand.plan.solve;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import closehand.plan.problem.PlanProblem;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import org.junit.jupiter.api.Test;

/** The search against every plan tried one by one, under rules written a second time. */
class BruteForceTest {
  private static int impossible;

  @Test
  void agreesOnTinyProblemsOfEveryKind() {
    for (int seed = 1; seed <= 300; seed++) {
      boolean tight = seed % 2 == 0;
      agrees("plain " + seed, RandomProblems.plain(seed, 5, 7, tight));
      agrees("everything " + seed, RandomProblems.everything(seed, 4, 8, tight));
    }
    assertTrue(impossible > 0 && impossible < 100, impossible + " impossible problems");
  }

  @Test
  void agreesWhereGroupsAreTooLargeToLookAtWhole() {
    for (int seed = 1; seed <= 40; seed++) {
      agrees("seven actions " + seed, RandomProblems.everything(7000 + seed, 7, 6, false));
    }
  }

  @Test
  void agreesOnTheTinyInstances() {
    for (int i = 1; i <= 8; i++) {
      agrees("tiny" + i, Instances.read("tiny" + i));
    }
  }

  private static void agrees(String name, PlanProblem problem) {
    OptionalLong least = BruteForce.leastCost(problem);
    PlanOutcome outcome = ControlPlanSolver.solve(problem, Budget.ORDINARY, Optional.empty());
    if (least.isEmpty()) {
      impossible++;
      assertEquals(PlanOutcome.Status.IMPOSSIBLE, outcome.status(), name);
      return;
    }
    assertEquals(PlanOutcome.Status.PROVED, outcome.status(), name);
    Reference reference = new Reference(problem);
    assertEquals(List.of(), reference.broken(outcome.plan()), name);
    assertEquals(reference.cost(outcome.plan()), outcome.best(), name);
    assertEquals(least.getAsLong(), outcome.best(), name);
  }
}
