package closehand.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import closehand.plan.PlanAsk.Wish;
import closehand.plan.solve.Budget;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;

/** What people decide themselves wins over the search. */
class WishTest {
  private static final Budget QUICK = Budget.ORDINARY.withNodes(100).withTolerance(50);
  private static final PlanAsk MOUSE = PlanAsk.USUAL.only(List.of("MOUSE_SIDE_L", "SW_FOOT"));

  @Test
  void jumpIsKeptOnTheCellThePlayerWantsAndTheRestIsPlannedAroundIt() {
    Planning planning = Player.gold("GC1").planning();
    Planned free = planning.plan(1, MOUSE, QUICK);
    Planned wished = planning.plan(1, MOUSE.with(List.of(new Wish("jump", "top2"))), QUICK);
    assertEquals("top2", wished.plan().assignment("STA03").orElseThrow().input());
    assertTrue(wished.plan().cost() >= free.plan().bound(), "a wish is never cheaper than free");
  }

  @Test
  void aCellAndAButtonOfAlmostTheSameNameAreToldApart() {
    Planning planning = Player.gold("GC1").planning();
    PlanAsk both = PlanAsk.USUAL.only(List.of("MOUSE_SIDE_L", "JOY_DESK", "SW_FOOT"));
    Planned wished = planning.plan(2, both.with(List.of(new Wish("Remove", "B2"))), QUICK);
    assertEquals("MOUSE_SIDE_L/B2", wished.plan().assignment("CIT04").orElseThrow().path());
  }

  @Test
  void aWishThatNothingCanServeIsToldAndNotPassedOver() {
    Planning planning = Player.gold("GC1").planning();
    List<Integer> first = List.of(1);
    assertTrue(
        planning.unread(with("flying", "B2"), first).get(0).contains("no action")
            || planning.unread(with("flying", "B2"), first).get(0).contains("No game"));
    assertTrue(planning.unread(with("jump", "Z9"), first).get(0).contains("within reach"));
    assertTrue(planning.unread(with("Camera", "B2"), first).get(0).contains("cannot be worked"));
    assertEquals(List.of(), planning.unread(with("jump", "B2"), first));
  }

  private static PlanAsk with(String action, String input) {
    return MOUSE.with(List.of(new Wish(action, input)));
  }

  @Test
  void fewerPartsNeverMakeThePlanEasier() {
    Planning planning = Player.gold("GC4").planning();
    Planned three = planning.plan(1, PlanAsk.USUAL, QUICK);
    Planned one =
        planning.plan(1, new PlanAsk(Optional.empty(), OptionalInt.of(1), List.of()), QUICK);
    assertTrue(one.plan().cost() >= three.plan().bound());
    assertTrue(one.plan().approaches().size() <= 2, one.plan().approaches().toString());
  }

  @Test
  void runnersUpNameOtherInputsAndWhatTheyWouldCost() {
    Planned plan = Player.gold("GC1").planning().plan(1, MOUSE, QUICK);
    var jump = plan.plan().assignment("STA03").orElseThrow();
    assertEquals(2, jump.runnersUp().size());
    assertFalse(jump.runnersUp().stream().anyMatch(r -> r.input().equals(jump.path())));
    assertTrue(jump.runnersUp().get(0).extra() <= jump.runnersUp().get(1).extra());
  }
}
