package closehand.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import closehand.bank.FlatValue;
import closehand.bank.Where;
import closehand.plan.demand.Demand;
import closehand.plan.demand.Form;
import closehand.plan.demand.Settled;
import closehand.plan.demand.WantedAction;
import closehand.plan.problem.Style;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** What games ask of invented players, told from their answers about them. */
class DemandStoryTest {
  private static final Form STICK = new Form(true, true);
  private static final Form KEYS = new Form(false, true);

  private static Settled settled(Demand demand, String action) {
    return demand.settled().stream()
        .filter(s -> s.action().equals(action))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void walkingIsOneStickOrFourDirections() {
    Planning planning = Player.gold("GC1").planning();
    assertEquals(Style.TWO_AXES, planning.demand(1, STICK).action("STA01").orElseThrow().style());
    Demand keys = planning.demand(1, KEYS);
    for (String way : List.of("forward", "left", "back", "right")) {
      assertEquals(Style.HOLD, keys.action("STA01." + way).orElseThrow().style());
    }
    double presses =
        keys.actions().stream()
            .filter(a -> a.of().equals("STA01"))
            .mapToDouble(WantedAction::perMinute)
            .sum();
    assertEquals(30, presses, 1e-9, "as many presses as the stick has pushes");
  }

  @Test
  void jumpMustWorkTogetherWithEveryDirection() {
    Demand keys = Player.gold("GC1").planning().demand(1, KEYS);
    List<String> partners = keys.action("STA03").orElseThrow().pressedWith();
    assertEquals(
        Set.of("STA01.forward", "STA01.left", "STA01.back", "STA01.right"), Set.copyOf(partners));
    assertTrue(keys.action("STA01.forward").orElseThrow().pressedWith().contains("STA03"));
  }

  @Test
  void aToggleIsOnlyThereWhereTheGameOffersIt() {
    Demand offers = Player.gold("GC1").planning().demand(1, KEYS);
    assertTrue(offers.action("STA06").orElseThrow().toggleOffered());
    assertTrue(offers.action("STA01.forward").orElseThrow().toggleOffered(), "auto-run");
    assertFalse(offers.action("STA01.back").orElseThrow().toggleOffered());
    Player without =
        Player.gold(
            "GC1",
            f ->
                f.put(
                    "games.1.options", new FlatValue.Texts(List.of("remapFull"), Where.file("x"))));
    Demand plain = without.planning().demand(1, KEYS);
    assertTrue(plain.actions().stream().noneMatch(WantedAction::toggleOffered));
  }

  @Test
  void aSettingOfTheGameTakesAnActionOffTheBody() {
    Player runner =
        Player.gold(
            "GC8",
            f ->
                f.put("games.1.options", new FlatValue.Texts(List.of("autoRun"), Where.file("x"))));
    Settled sprint = settled(runner.planning().demand(1, KEYS), "FPA05");
    assertEquals(Settled.How.SETTING, sprint.how());
    assertEquals("always run", sprint.words());
  }

  @Test
  void droppedActionsAreNotAskedForAndMustsAreRaised() {
    Player choosy =
        Player.gold(
            "GC8",
            f -> {
              f.put("games.1.drop", new FlatValue.Texts(List.of("FPA24"), Where.file("x")));
              f.put("games.1.must", new FlatValue.Texts(List.of("FPA19"), Where.file("x")));
            });
    Demand demand = choosy.planning().demand(1, KEYS);
    assertEquals(Settled.How.DROPPED, settled(demand, "FPA24").how());
    assertEquals(3, demand.action("FPA19").orElseThrow().importance());
  }

  @Test
  void sequencesStayOffOneButtonWhereTheModeForbidsAutomation() {
    Demand strict = Player.gold("GC8").planning().demand(2, KEYS);
    assertEquals(Settled.How.WITH, settled(strict, "FGT09").how());
    Player casual =
        Player.gold(
            "GC8", f -> f.put("games.2.macros", new FlatValue.Text("allowed", Where.file("x"))));
    assertEquals(
        Style.TAP, casual.planning().demand(2, KEYS).action("FGT09").orElseThrow().style());
  }

  @Test
  void pointingAsksForAPointerAndForAPress() {
    Demand city = Player.gold("GC5").planning().demand(1, STICK);
    assertEquals(WantedAction.Purpose.POINT, city.action("CIT01").orElseThrow().purpose());
    assertEquals(Style.TAP, city.action("CIT01.press").orElseThrow().style());
    assertEquals("CIT01.press", settled(city, "CIT03").with(), "drags use the same button");
    assertEquals("CIT01", settled(city, "CIT06").with(), "the view moves at the screen's edge");
  }

  @Test
  void noActionIsHeldForMoreThanTheMinuteHolds() {
    for (String id : Player.ids()) {
      Planning planning = Player.gold(id).planning();
      for (int slot : planning.slots()) {
        for (Form form : Form.ALL) {
          for (WantedAction action : planning.demand(slot, form).actions()) {
            assertTrue(action.perMinute() * action.holdSeconds() <= 60, action.id());
          }
        }
      }
    }
  }
}
