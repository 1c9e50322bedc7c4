package closehand.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import closehand.plan.ControlPlan.LeftOut;
import closehand.plan.solve.Budget;
import closehand.report.BroughtIn;
import closehand.report.ClashLines;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What is left out comes with the single change that would bring it in, found by solving again. */
class LeftOutTest {
  private static final Budget QUICK = Budget.ORDINARY.withNodes(100).withTolerance(50);
  private static final Budget TRIED = Budget.ORDINARY.withNodes(40).withTolerance(100);

  private final Planning planning = Player.gold("GC7").planning();

  private LeftOut told(int slot, String action) {
    Planned plan = planning.plan(slot, PlanAsk.USUAL, QUICK);
    Planned told = BroughtIn.into(Player.bank(), planning, PlanAsk.USUAL, plan, TRIED);
    assertEquals(plan.plan().assignments(), told.plan().assignments());
    return told.plan().leftOut().stream()
        .filter(l -> l.id().equals(action))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void oneActionLessAToggleOrAPairBringsAcceleratingIn() {
    List<String> ways = told(2, "RAC02").bringInBy();
    assertTrue(ways.contains("\"Brake\" left out instead"), ways.toString());
    assertTrue(ways.stream().anyMatch(w -> w.contains("switched on and off")), ways.toString());
    assertTrue(ways.stream().anyMatch(w -> w.contains("if the game has it")), ways.toString());
  }

  @Test
  void anotherControlThatIsNamedReallyBringsTheActionInAndAsksAClinicianFirst() {
    List<String> ways = told(1, "PTY02").bringInBy();
    String chin = "another control, not suggested so far and only with a clinician's yes: chin";
    assertTrue(ways.stream().anyMatch(w -> w.startsWith(chin)), ways.toString());
    List<String> more = new ArrayList<>(planning.suggested(1));
    more.add("JOY_CHIN");
    Planned with = planning.plan(1, PlanAsk.USUAL.only(more), QUICK);
    assertTrue(with.plan().assignments().stream().anyMatch(a -> a.action().equals("PTY02")));
    assertTrue(with.plan().approaches().contains("JOY_CHIN"));
  }

  @Test
  void neededActionsThatCannotAllHaveAPlaceAreToldAsTheSmallestClash() {
    Planned plan = planning.plan(2, PlanAsk.USUAL, QUICK);
    List<String> clash = ClashLines.demands(plan);
    assertTrue(clash.stream().anyMatch(c -> c.contains("work at the same moment")));
    assertTrue(clash.stream().anyMatch(c -> c.startsWith("\"Accelerate\" has a place")));
    assertFalse(clash.stream().anyMatch(c -> c.contains("Horn")), clash.toString());
    Planned whole = Player.gold("GC5").planning().plan(1, PlanAsk.USUAL, QUICK);
    assertEquals(List.of(), ClashLines.demands(whole));
  }

  @Test
  void twoWishesForOneCellAreTheClashAndNothingElseIs() {
    PlanAsk both =
        new PlanAsk(
            Optional.of(List.of("MOUSE_SIDE_L", "SW_FOOT")),
            java.util.OptionalInt.empty(),
            List.of(
                new PlanAsk.Wish("STA03", "B3"),
                new PlanAsk.Wish("STA12", "B3"),
                new PlanAsk.Wish("STA06", "second")));
    Planned plan = Player.gold("GC1").planning().plan(1, both, QUICK);
    List<String> clash = ClashLines.demands(plan);
    assertEquals(2, clash.size(), clash.toString());
    assertTrue(clash.stream().allMatch(c -> c.contains("side cell B3")), clash.toString());
  }
}
