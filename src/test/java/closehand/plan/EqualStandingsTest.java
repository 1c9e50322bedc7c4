package closehand.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import closehand.plan.Mixes.Mix;
import closehand.plan.solve.Budget;
import closehand.rules.Advice;
import closehand.rules.Standing;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Rules rank first; plans tell apart only what the rules give the same points. */
class EqualStandingsTest {
  private static final Budget LITTLE = Budget.ORDINARY.withNodes(30).withTolerance(100);

  private static EqualStandings found(Player player) {
    return EqualStandings.of(player.planning(), player.advice(), LITTLE);
  }

  @Test
  void pointsOutrankPlansForEveryGoldCase() {
    int moved = 0;
    for (String id : Player.ids()) {
      Advice before = Player.gold(id).advice();
      Advice after = found(Player.gold(id)).in(before);
      List<Integer> points = after.suggestions().stream().map(Standing::points).toList();
      assertEquals(before.suggestions().stream().map(Standing::points).toList(), points, id);
      assertEquals(
          names(before).stream().sorted().toList(), names(after).stream().sorted().toList());
      moved += names(before).equals(names(after)) ? 0 : 1;
    }
    assertTrue(moved > 0, "plans tell nothing apart");
  }

  private static List<String> names(Advice advice) {
    return advice.standings().stream().map(s -> s.approach().id()).toList();
  }

  @Test
  void amongEqualsMoreNeededActionsComeFirstAndLessEffortAfterThat() {
    int compared = 0;
    for (List<Mix> group : found(Player.gold("GC4")).groups()) {
      for (int i = 1; i < group.size(); i++) {
        Mix first = group.get(i - 1);
        Mix second = group.get(i);
        assertEquals(first.points(), second.points());
        assertTrue(
            first.mustsPlaced() > second.mustsPlaced()
                || (first.mustsPlaced() == second.mustsPlaced() && first.cost() <= second.cost()));
        compared++;
      }
    }
    assertTrue(compared > 1);
  }

  @Test
  void theOrderIsTheSameEveryTimeAndStandsInTheAdvice() {
    Player player = Player.gold("GC4");
    EqualStandings one = found(player);
    assertEquals(one, found(player));
    List<String> order = names(one.in(player.advice()));
    for (List<Mix> group : one.groups()) {
      List<Integer> places = new ArrayList<>();
      group.forEach(m -> places.add(order.indexOf(m.approaches().get(0))));
      assertEquals(places.stream().sorted().toList(), places);
    }
  }
}
