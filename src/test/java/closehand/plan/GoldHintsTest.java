package closehand.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import closehand.plan.ControlPlan.Assignment;
import closehand.plan.solve.Budget;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;

/**
 * What an experienced practitioner would do for eight invented players, action by action, held
 * against the plans. A hint holds where the plan does the same; where it does not, a plan made
 * around the hint asks for more, so a better place was found.
 */
class GoldHintsTest {
  private static final Budget QUICK = Budget.ORDINARY.withNodes(200).withTolerance(30);
  private static final int MOST_OTHERWISE = 28;

  /** An action, and where a practitioner would put it: an approach and the part of the body. */
  private record Hint(String player, int slot, String action, String approach, String effector) {}

  private static final List<Hint> HINTS =
      List.of(
          new Hint("GC1", 1, "STA02", "MOUSE_SIDE_L", "L.hand"),
          new Hint("GC1", 1, "STA03", "MOUSE_SIDE_L", "L.I"),
          new Hint("GC1", 1, "STA04", "MOUSE_SIDE_L", "L.I"),
          new Hint("GC1", 1, "STA06", "MOUSE_SIDE_L", "L.M"),
          new Hint("GC1", 1, "STA07", "MOUSE_SIDE_L", "L.I"),
          new Hint("GC1", 1, "STA08", "SW_FOOT", "L.foot"),
          new Hint("GC1", 1, "STA12", "MOUSE_SIDE_L", "L.T"),
          new Hint("GC1", 1, "STA20", "VOICE", "voice"),
          new Hint("GC1", 1, "STA21", "SW_LARGE", "R.elbow"),
          new Hint("GC2", 1, "RAC01", "JOY_DESK", "R.*"),
          new Hint("GC2", 1, "RAC02", "JOY_DESK", "R.*"),
          new Hint("GC2", 1, "RAC03", "SW_LARGE", "L.*"),
          new Hint("GC2", 1, "RAC07", "SW_LARGE", "L.*"),
          new Hint("GC2", 2, "TBS01", "TRACKBALL", "*.hand"),
          new Hint("GC2", 2, "TBS05", "VOICE", "voice"),
          new Hint("GC3", 1, "FPA01", "JOY_LIGHT", "R.T"),
          new Hint("GC3", 1, "FPA02", "JOY_LIGHT", "L.T"),
          new Hint("GC3", 1, "FPA03", "SW_FINGER", "R.I"),
          new Hint("GC3", 1, "FPA06", "SW_FINGER", "L.I"),
          new Hint("GC3", 1, "FPA04", "SW_SENSE", "L.M"),
          new Hint("GC4", 1, "SPT01", "PAD_ONE_R", "R.T"),
          new Hint("GC4", 1, "SPT02", "PAD_ONE_R", "R.*"),
          new Hint("GC4", 1, "SPT04", "PAD_ONE_R", "R.*"),
          new Hint("GC4", 1, "SPT06", "SW_FOOT", "L.foot"),
          new Hint("GC4", 1, "SPT08", "SW_LARGE", "L.forearm"),
          new Hint("GC4", 1, "SPT07", "PAD_ONE_R", "R.I"),
          new Hint("GC4", 2, "PLT02", "PAD_ONE_R", "R.I"),
          new Hint("GC5", 1, "CIT01", "TRACKBALL", "*.hand"),
          new Hint("GC5", 1, "CIT02", "SW_LARGE", "*.hand"),
          new Hint("GC5", 1, "CIT09", "VOICE", "voice"),
          new Hint("GC5", 1, "CIT10", "VOICE", "voice"),
          new Hint("GC6", 1, "RPG01", "JOY_DESK", "L.*"),
          new Hint("GC6", 1, "RPG05", "SW_LARGE", "R.hand"),
          new Hint("GC6", 1, "RPG17", "SW_LARGE", "R.hand"),
          new Hint("GC6", 1, "RPG15", "VOICE", "voice"),
          new Hint("GC6", 1, "RPG16", "VOICE", "voice"),
          new Hint("GC6", 1, "RPG21", "VOICE", "voice"),
          new Hint("GC7", 2, "RAC01.left", "SW_HEAD", "head"),
          new Hint("GC7", 2, "RAC01.right", "SW_HEAD", "head"),
          new Hint("GC7", 1, "PTY01.left", "SW_HEAD", "*"),
          new Hint("GC8", 1, "FPA02.forward", "KEYPAD", "L.*"),
          new Hint("GC8", 1, "FPA05", "SW_FOOT", "*.foot"),
          new Hint("GC8", 1, "FPA07", "SW_FOOT", "*.foot"),
          new Hint("GC8", 1, "FPA01", "MOUSE_PLAIN", "R.*"),
          new Hint("GC8", 1, "FPA03", "MOUSE_PLAIN", "R.I"),
          new Hint("GC8", 1, "FPA19", "SW_FOOT", "R.foot"),
          new Hint("GC8", 2, "FGT01.left", "KEYPAD", "*"));

  @Test
  void hintsHoldOrABetterPlaceWasFound() {
    Map<String, Planned> plans = new HashMap<>();
    List<String> otherwise = new ArrayList<>();
    for (Hint hint : HINTS) {
      Planning planning = Player.gold(hint.player()).planning();
      Planned plan =
          plans.computeIfAbsent(
              hint.player() + hint.slot(), k -> planning.plan(hint.slot(), PlanAsk.USUAL, QUICK));
      Optional<Assignment> placed = plan.plan().assignment(hint.action());
      boolean holds =
          placed
              .filter(a -> a.approach().equals(hint.approach()))
              .filter(a -> fits(a.effector(), hint.effector()))
              .isPresent();
      if (!holds) {
        otherwise.add(hint + " but " + placed.map(a -> a.path() + " " + a.effector()));
        assertTrue(isNoEasier(planning, hint, plan), hint.toString());
      }
    }
    assertTrue(otherwise.size() <= MOST_OTHERWISE, String.join("\n", otherwise));
  }

  /** A plan with the approach of the hint forced in asks for as much or more. */
  private static boolean isNoEasier(Planning planning, Hint hint, Planned plan) {
    List<String> others = new ArrayList<>(plan.plan().approaches());
    if (!others.contains(hint.approach())) {
      others.add(hint.approach());
    }
    PlanAsk around = new PlanAsk(Optional.of(others), OptionalInt.empty(), List.of());
    return planning.plan(hint.slot(), around, QUICK).plan().cost() >= plan.plan().bound();
  }

  private static boolean fits(String effector, String pattern) {
    return pattern.equals("*") || effector.matches(pattern.replace(".", "\\.").replace("*", ".*"));
  }

  @Test
  void whatMustNotBeIsNowhere() {
    for (Planned planned :
        Player.gold("GC8").planning().session(PlanAsk.USUAL, () -> QUICK).values()) {
      for (Assignment one : planned.plan().assignments()) {
        assertTrue(!one.effector().equals("R.T"), "the right thumb rests: " + one.id());
      }
    }
    for (Planned planned :
        Player.gold("GC5").planning().session(PlanAsk.USUAL, () -> QUICK).values()) {
      for (Assignment one : planned.plan().assignments()) {
        assertTrue(!one.effector().equals("R.I"), "the hot joint rests: " + one.id());
        assertTrue(!one.effector().equals("head"), "the neck is not cleared: " + one.id());
      }
    }
    for (Planned planned :
        Player.gold("GC1").planning().session(PlanAsk.USUAL, () -> QUICK).values()) {
      for (Assignment one : planned.plan().assignments()) {
        boolean rightDigit = one.effector().startsWith("R.") && one.effector().length() == 3;
        assertEquals(false, rightDigit, one.id());
      }
    }
  }
}
