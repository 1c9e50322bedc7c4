package closehand.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import closehand.plan.ControlPlan.Assignment;
import closehand.plan.ControlPlan.Mode;
import closehand.plan.solve.Budget;
import closehand.strain.Body;
import closehand.strain.DayLoad;
import closehand.strain.EffectorReading;
import closehand.strain.Flag;
import closehand.strain.HandReading;
import closehand.strain.PlanLoad;
import closehand.strain.PlanUses;
import closehand.strain.PlayTimes;
import closehand.strain.Use;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** The load of the plans of the gold cases: every assignment is counted, as it is worked. */
class PlanUsesTest {
  private static List<Planned> plans(Player player) {
    Optional<Planning> planning =
        Planning.of(Player.bank(), player.answers(), player.advice(), Map.of(), Map.of());
    return planning
        .map(p -> p.session(PlanAsk.USUAL, () -> Budget.ORDINARY.withNodes(200)))
        .map(m -> List.copyOf(m.values()))
        .orElse(List.of());
  }

  @Test
  void everyAssignmentIsCountedAsItIsWorked() {
    int checked = 0;
    for (String id : Player.ids()) {
      for (Planned planned : plans(Player.gold(id))) {
        List<Use> uses = PlanUses.of(planned, Body.UNKNOWN);
        for (Assignment assignment : planned.plan().assignments()) {
          List<Use> own = uses.stream().filter(u -> u.action().equals(assignment.id())).toList();
          assertEquals(assignment.perMinute() > 0 ? 1 : 0, own.size(), assignment.id());
          for (Use use : own) {
            boolean twice = assignment.mode() == Mode.TOGGLE;
            assertEquals(assignment.effector(), use.effector());
            assertEquals(
                assignment.perMinute() * (twice ? 2 : 1), use.exertion().perMinute(), 1e-9);
            if (assignment.mode() == Mode.HOLD) {
              assertEquals(assignment.holdSeconds(), use.exertion().seconds(), 1e-9);
              assertEquals(Use.Kind.HOLD, use.kind());
            }
            checked++;
          }
          boolean layer =
              uses.stream().anyMatch(u -> u.action().equals(assignment.id() + ".layer"));
          assertEquals(assignment.held().isPresent() && assignment.perMinute() > 0, layer);
        }
      }
    }
    assertTrue(checked > 50, "assignments were checked: " + checked);
  }

  /** The plan keeps below the red lines, so its load is never red without a wish. */
  @Test
  void noPlanOfAGoldCaseIsBlocked() {
    int games = 0;
    for (String id : Player.ids()) {
      Player player = Player.gold(id);
      Body body = Body.of(player.answers());
      List<PlanLoad> loads = new ArrayList<>();
      for (Planned planned : plans(player)) {
        PlanLoad load =
            PlanLoad.of(
                planned.plan().title(),
                PlanUses.of(planned, body),
                body,
                PlayTimes.of(player.answers()));
        loads.add(load);
        games++;
        assertEquals(List.of(), load.blocking(List.of()), id);
        for (EffectorReading part : load.effectors()) {
          assertFalse(part.uses().isEmpty());
        }
        for (HandReading hand : load.hands()) {
          assertTrue(
              hand.composite().figure().isPresent()
                  || hand.composite().flags().contains(Flag.MORE_THAN_A_MINUTE));
        }
      }
      if (!loads.isEmpty()) {
        assertEquals(loads.size(), DayLoad.of(loads).games().size());
      }
    }
    assertTrue(games > 5, "games were planned: " + games);
  }
}
