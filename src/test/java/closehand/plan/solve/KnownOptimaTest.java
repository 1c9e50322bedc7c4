package closehand.plan.solve;

import static org.junit.jupiter.api.Assertions.assertEquals;

import closehand.plan.problem.PlanPricer;
import closehand.plan.problem.PlanProblem;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The eighteen standard instances, whose optima two other programs agreed on beforehand. */
class KnownOptimaTest {
  @ParameterizedTest
  @CsvSource({
    "small1, 74858, 1",
    "small2, 16997, 0",
    "small3, 22208, 0",
    "small4, 20149, 0",
    "small5, 72430, 1",
    "small6, 17519, 0",
    "medium1, 95800, 6",
    "medium2, 77568, 2",
    "medium3, 74422, 2",
    "medium4, 19375, 0",
    "medium5, 76948, 2",
    "medium6, 26374, 1",
    "large1, 79580, 3",
    "large2, 30872, 6",
    "large3, 89163, 9",
    "large4, 28909, 5",
    "large5, 43017, 16",
    "large6, 29749, 7"
  })
  void isFoundAndProved(String name, long optimum, int leftOut) {
    PlanProblem problem = Instances.read(name);
    PlanOutcome outcome = ControlPlanSolver.solve(problem, Budget.ORDINARY, Optional.empty());
    assertEquals(PlanOutcome.Status.PROVED, outcome.status());
    assertEquals(optimum, outcome.best());
    assertEquals(optimum, outcome.bound());
    assertEquals(leftOut, problem.play().actions().size() - outcome.plan().list().size());
    Reference reference = new Reference(problem);
    assertEquals(List.of(), reference.broken(outcome.plan()));
    assertEquals(optimum, reference.cost(outcome.plan()));
    assertEquals(List.of(), new PlanPricer(problem).price(outcome.plan()).breaches());
  }
}
