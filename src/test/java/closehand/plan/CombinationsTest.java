package closehand.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import closehand.plan.Mixes.Mix;
import closehand.plan.solve.Budget;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Every useful combination of controls is told, and none asks for less than the best plan. */
class CombinationsTest {
  private static final Budget LITTLE = Budget.ORDINARY.withNodes(60).withTolerance(50);

  @Test
  void theBestPlanIsOneOfThemAndNoneIsEasier() {
    for (String id : new String[] {"GC1", "GC5"}) {
      Planning planning = Player.gold(id).planning();
      int slot = planning.slots().get(planning.slots().size() - 1);
      Mixes.Comparison found = Mixes.of(planning, slot, PlanAsk.USUAL, () -> LITTLE);
      ControlPlan best = found.best().plan();
      assertTrue(best.approaches().size() > 1, id);
      assertTrue(
          found.together().stream()
              .anyMatch(m -> Set.copyOf(m.approaches()).equals(Set.copyOf(best.approaches()))),
          id + found.together());
      for (Mix mix : found.together()) {
        assertTrue(mix.approaches().size() > 1);
        assertTrue(mix.cost() >= best.bound(), mix.toString());
        assertTrue(mix.cost() <= best.cost() + best.cost() / 4, mix.toString());
      }
      assertEquals(
          found.together().stream().sorted(Mix.RANKING).toList(), found.together(), "ranked");
    }
  }
}
