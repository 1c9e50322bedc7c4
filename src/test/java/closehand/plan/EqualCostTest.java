package closehand.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import closehand.plan.problem.PlanPricer;
import closehand.plan.solve.Budget;
import closehand.strain.Body;
import closehand.strain.PlanLoad;
import closehand.strain.PlanUses;
import closehand.strain.PlayTime;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Between plans of equal effort the one with lighter hands wins, and nothing else changes. */
class EqualCostTest {
  private static double heavierHand(Planned planned) {
    return PlanLoad.of(
            planned.plan().title(),
            PlanUses.of(planned, Body.UNKNOWN),
            Body.UNKNOWN,
            new PlayTime(1, 3))
        .heavierHand();
  }

  @Test
  void theCostStaysAndTheHandsNeverGetHeavier() {
    lighterGames(PlanAsk.USUAL, List.of("GC1", "GC3", "GC5", "GC7"));
  }

  @Test
  void amongLightSwitchesThatCostTheSameTheBusyOnesAreSharedOut() {
    PlanAsk switches = PlanAsk.USUAL.only(List.of("SW_FINGER"));
    assertTrue(lighterGames(switches, List.of("GC4", "GC5")) > 0, "some ties are broken");
  }

  private static int lighterGames(PlanAsk ask, List<String> ids) {
    int lighter = 0;
    int games = 0;
    for (String id : ids) {
      Player player = Player.gold(id);
      if (player.advice().withheld()) {
        continue;
      }
      Planning usual = player.planning();
      Planning light = usual.breakingTiesBy(EqualCostTest::heavierHand);
      for (int slot : usual.slots()) {
        Planned before = usual.plan(slot, ask, Budget.ORDINARY.withNodes(20));
        Planned after = light.plan(slot, ask, Budget.ORDINARY.withNodes(20));
        games++;
        assertEquals(before.plan().cost(), after.plan().cost(), id);
        assertEquals(before.plan().bound(), after.plan().bound(), id);
        assertEquals(before.plan().sureness(), after.plan().sureness(), id);
        assertEquals(before.plan().leftOut().size(), after.plan().leftOut().size(), id);
        if (!after.outcome().plan().list().isEmpty()) {
          assertTrue(new PlanPricer(after.problem()).price(after.outcome().plan()).isAllowed(), id);
        }
        assertTrue(heavierHand(after) <= heavierHand(before), id);
        lighter += heavierHand(after) < heavierHand(before) ? 1 : 0;
      }
    }
    assertTrue(games > 5, "games: " + games);
    return lighter;
  }
}
