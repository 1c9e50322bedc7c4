package closehand.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import closehand.plan.problem.Placement;
import closehand.plan.problem.PlacementRules;
import closehand.plan.problem.PlanProblem;
import closehand.plan.solve.Budget;
import closehand.plan.supply.Measured;
import closehand.plan.supply.SuppliedInput;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** What was measured of inputs changes what they cost, and never what a game can use. */
class MeasuredInputsTest {
  private static final Budget QUICK = Budget.ORDINARY.withNodes(30).withTolerance(100);

  @Test
  void noDifferenceInTimeMakesAnInputTooSlowOrQuickEnough() {
    Planning planning = Player.gold("GC1").planning();
    Planned planned = planning.plan(planning.slots().get(0), PlanAsk.USUAL, QUICK);
    PlanProblem bare = planned.problem();
    for (int more : List.of(-5_000, -90, 90, 5_000)) {
      Map<String, Measured> measured = new HashMap<>();
      for (SuppliedInput input : planned.supply().inputs()) {
        measured.put(input.id(), new Measured(more, 0, 1));
      }
      PlanProblem now = MeasuredInputs.in(bare, measured);
      for (var action : bare.play().actions()) {
        List<Placement> before =
            new PlacementRules(bare)
                .possible(action.id()).stream().filter(p -> p.slot().layer().isEmpty()).toList();
        List<Placement> after =
            new PlacementRules(now)
                .possible(action.id()).stream().filter(p -> p.slot().layer().isEmpty()).toList();
        assertEquals(before, after, action.id() + " at " + more);
      }
    }
  }

  @Test
  void whatIsMissedOrTiringCostsMoreWhereItSits() {
    Planning planning = Player.gold("GC1").planning();
    Planned planned = planning.plan(planning.slots().get(0), PlanAsk.USUAL, QUICK);
    Placement some =
        planned.outcome().plan().list().stream()
            .filter(p -> planned.demand().action(p.action()).orElseThrow().perMinute() > 1)
            .findFirst()
            .orElseThrow();
    long before = new PlacementRules(planned.problem()).cost(some).total();
    for (Measured worse :
        List.of(new Measured(0, 300, 1), new Measured(0, 0, 1.4), new Measured(80, 100, 1.1))) {
      PlanProblem now = MeasuredInputs.in(planned.problem(), Map.of(some.slot().input(), worse));
      assertTrue(new PlacementRules(now).cost(some).total() > before, worse::toString);
    }
  }
}
