package closehand.plan.solve;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import closehand.plan.problem.PlanProblem;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The search against a general solver on the same model, coded apart; skipped without natives. */
class CpSatTest {
  private static final double SECONDS = 60;

  @BeforeAll
  static void nativesLoad() {
    assumeTrue(CpSatOracle.isAvailable(), "the native part of the solver does not load here");
  }

  @Test
  void agreesOnSeededProblems() {
    for (int seed = 1; seed <= 200; seed++) {
      agrees("seed " + seed, RandomProblems.plain(50_000 + seed, 9, 14, seed % 2 == 0));
    }
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "small1", "small2", "small3", "small4", "small5", "small6", "medium1", "medium3", "medium4",
        "medium6"
      })
  void agreesOnInstances(String name) {
    agrees(name, Instances.read(name));
  }

  private static void agrees(String name, PlanProblem problem) {
    Optional<CpSatOracle.Answer> oracle = CpSatOracle.solve(problem, SECONDS);
    PlanOutcome outcome = ControlPlanSolver.solve(problem, Budget.ORDINARY, Optional.empty());
    assertTrue(oracle.isPresent() && oracle.get().proved(), name + " not proved by the oracle");
    assertEquals(PlanOutcome.Status.PROVED, outcome.status(), name);
    assertEquals(oracle.get().best(), outcome.best(), name);
    Reference reference = new Reference(problem);
    assertEquals(List.of(), reference.broken(outcome.plan()), name);
    assertEquals(outcome.best(), reference.cost(outcome.plan()), name);
  }
}
