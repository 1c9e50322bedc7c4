package closehand.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import closehand.bank.FlatValue;
import closehand.bank.Where;
import closehand.plan.problem.Style;
import closehand.plan.supply.BodyPart;
import closehand.plan.supply.Factors;
import closehand.plan.supply.SuppliedInput;
import closehand.plan.supply.Supply;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** What invented players can reach and work, told from their answers. */
class SupplyStoryTest {
  private static Supply of(String id, String... approaches) {
    return Player.gold(id).planning().supply(1, PlanAsk.USUAL.only(List.of(approaches)));
  }

  private static Set<String> inputs(Supply supply) {
    return Set.copyOf(supply.inputs().stream().map(SuppliedInput::path).toList());
  }

  @Test
  void theSidePanelHoldsOnlyTheCellsTheThumbReaches() {
    Set<String> inputs = inputs(of("GC1", "MOUSE_SIDE_L"));
    for (String cell : List.of("A1", "A2", "A3", "B1", "B2", "B3", "C2")) {
      assertTrue(inputs.contains("MOUSE_SIDE_L/" + cell), cell);
    }
    for (String cell : List.of("A4", "B4", "C1", "C3", "C4")) {
      assertFalse(inputs.contains("MOUSE_SIDE_L/" + cell), cell);
    }
  }

  @Test
  void topButtonsAreWorkedByTheFingersThatWereNamed() {
    Supply supply = of("GC1", "MOUSE_SIDE_L");
    assertEquals("L.I", effector(supply, "MOUSE_SIDE_L@top1", "MOUSE_SIDE_L/top1"));
    assertEquals("L.M", effector(supply, "", "MOUSE_SIDE_L/second"));
    assertEquals("L.hand", effector(supply, "", "MOUSE_SIDE_L/pointer"));
  }

  private static String effector(Supply supply, String ignored, String path) {
    return supply.inputs().stream()
        .filter(i -> i.path().equals(path))
        .map(SuppliedInput::effector)
        .findFirst()
        .orElseThrow();
  }

  @Test
  void aClosedHandWorksNothingButAnElbowDoes() {
    Supply supply = of("GC1", "SW_LARGE", "SW_FINGER", "KEYPAD");
    Set<String> right =
        Set.copyOf(
            supply.inputs().stream()
                .map(SuppliedInput::effector)
                .filter(e -> e.startsWith("R."))
                .toList());
    assertEquals(Set.of("R.elbow"), right);
  }

  @Test
  void aRuledOutApproachSuppliesNothingHoweverMuchItIsWanted() {
    assertEquals(List.of(), of("GC1", "PAD_STD").inputs());
  }

  @Test
  void aRestingThumbHasNoInputs() {
    Supply supply = of("GC8", "KEYPAD", "MOUSE_PLAIN");
    assertTrue(supply.inputs().stream().noneMatch(i -> i.effector().equals("R.T")));
    assertTrue(supply.inputs().stream().anyMatch(i -> i.effector().equals("R.I")));
  }

  @Test
  void aSlowFootHasAHigherFactorThanAFingerAndSaysWhichRuleMadeIt() {
    Supply supply = of("GC1", "SW_FOOT");
    Factors.Factor factor = supply.factors().of("L.foot", Set.of("firmPress"), 1, true);
    assertEquals(1.3, factor.value(), 1e-9);
    assertEquals(List.of("R084a"), factor.rules());
  }

  @Test
  void factorsStackAndAreHeldBetweenLeastAndMost() {
    Supply supply = of("GC1", "MOUSE_SIDE_L");
    Factors.Factor busy = supply.factors().of("L.R", Set.of(), 1, true);
    assertEquals(1.2 * 1.3 * 1.2, busy.value(), 1e-9, busy.rules().toString());
    assertEquals(6, supply.factors().of("L.I", Set.of(), 100, true).value(), 1e-9);
    assertEquals(0.5, supply.factors().of("L.I", Set.of(), 0.01, true).value(), 1e-9);
  }

  @Test
  void toldFactsMakeItHarderNeverEasier() {
    Supply supply = of("GC1", "MOUSE_SIDE_L");
    double told = supply.factors().of("L.I", Set.of(), 1, false).value();
    double seen = supply.factors().of("L.I", Set.of(), 1, true).value();
    assertTrue(told > seen);
  }

  @Test
  void loadLimitsComeFromTheMeasuredTapRate() {
    Supply supply = of("GC5", "MOUSE_PLAIN", "KEYPAD");
    BodyPart index = supply.body().get("L.I");
    assertEquals(600, index.mostPressesTenths(), "half of 25 taps in ten seconds, at most 60");
    assertEquals(300, index.greenPressesTenths(), "a fifth of it, at most 30");
    assertEquals(4800, index.longestHoldMillis().orElseThrow(), "four fifths of six seconds");
  }

  @Test
  void spokenCommandsFollowHowMuchIsUnderstood() {
    Supply supply = of("GC1", "VOICE");
    assertEquals(6, supply.inputs().size(), "86 of 100 understood: six phrases");
    assertEquals(860, supply.body().get("voice").reliabilityPerMille());
    assertTrue(supply.inputs().stream().allMatch(i -> i.can().equals(Set.of(Style.TAP))));
  }

  @Test
  void anAnswerThatIsMissingMakesTheSupplySmallerAndIsWaitedFor() {
    Player unsure = Player.gold("GC1", f -> f.remove("digit.L.panel.T"));
    Supply supply = unsure.planning().supply(1, PlanAsk.USUAL.only(List.of("MOUSE_SIDE_L")));
    assertTrue(supply.inputs().stream().noneMatch(i -> i.kind().equals("cell")));
    assertTrue(supply.waitsFor().contains("digit.L.panel.T"), supply.waitsFor().toString());
  }

  @Test
  void fingersThatFailTogetherAreCoupled() {
    Supply any = of("GC1", "MOUSE_SIDE_L", "KEYPAD");
    assertTrue(any.coupled().isEmpty(), any.coupled().toString());
    Player some =
        Player.gold("GC1", f -> f.put("pairs.ok", new FlatValue.Text("some", Where.file("x"))));
    Supply few = some.planning().supply(1, PlanAsk.USUAL.only(List.of("MOUSE_SIDE_L", "KEYPAD")));
    assertTrue(few.coupled().stream().anyMatch(p -> p.first().equals("L.I")), "neighbours");
  }

  @Test
  void theSameHandCannotWorkTwoDevices() {
    Supply supply = of("GC8", "KEYPAD", "MOUSE_PLAIN");
    assertTrue(clash(supply, "KEYPAD@L", "MOUSE_PLAIN@L"));
    assertFalse(clash(supply, "KEYPAD@L", "MOUSE_PLAIN@R"));
  }

  private static boolean clash(Supply supply, String one, String other) {
    return supply.device(one).orElseThrow().clashes(supply.device(other).orElseThrow());
  }

  @Test
  void aFingerRestsOnOneThing() {
    Supply supply = of("GC3", "JOY_LIGHT", "SW_FINGER", "SW_SENSE");
    assertTrue(excludes(supply, "SW_FINGER/LT", "JOY_LIGHT/stick"), "a thumb on a small joystick");
    assertTrue(excludes(supply, "SW_FINGER/LT", "JOY_LIGHT/stick.up"), "or on one way of it");
    assertTrue(excludes(supply, "SW_FINGER/LI", "SW_SENSE/LI"), "a switch and a sensor");
    assertFalse(excludes(supply, "SW_FINGER/LI", "SW_SENSE/LT"), "another finger may");
  }

  @Test
  void besideAFingerThatDragsItsNeighboursAlongThereIsNoOtherSensor() {
    Supply supply = of("GC3", "SW_SENSE");
    assertTrue(excludes(supply, "SW_SENSE/LR", "SW_SENSE/LM"), "the ring finger drags the middle");
    assertTrue(excludes(supply, "SW_SENSE/LR", "SW_SENSE/LL"), "and the little finger");
    assertFalse(excludes(supply, "SW_SENSE/LR", "SW_SENSE/LI"), "the index finger lies apart");
    assertFalse(excludes(supply, "SW_SENSE/LI", "SW_SENSE/LM"), "these two move alone");
  }

  private static boolean excludes(Supply supply, String one, String other) {
    return supply.exclusive().stream()
        .map(p -> Set.of(path(supply, p.first()), path(supply, p.second())))
        .anyMatch(Set.of(one, other)::equals);
  }

  private static String path(Supply supply, String input) {
    return supply.input(input).orElseThrow().path();
  }

  @Test
  void leftLiesLeftOfRightOnSwitchesOfTheHeadFeetAndArms() {
    for (String pair : List.of("SW_HEAD/side", "SW_FOOT/?toe", "SW_LARGE/?forearm")) {
      Supply supply = of(pair.startsWith("SW_HEAD") ? "GC7" : "GC4", pair.split("/")[0]);
      List<Integer> columns =
          supply.inputs().stream()
              .filter(i -> i.input().matches(pair.split("/")[1].replace("?", "[LR]") + "[LR]?"))
              .sorted(java.util.Comparator.comparing(SuppliedInput::input))
              .map(SuppliedInput::column)
              .toList();
      assertEquals(columns.stream().sorted().distinct().toList(), columns, pair);
    }
  }

  @Test
  void holdsCostMoreOnAHandWhoseWristHurtsWhenPainRisesInPlay() {
    Factors factors = of("GC8", "KEYPAD").factors();
    double sore = factors.of("R.M", Set.of("hold"), 1, true).value();
    assertEquals(2 * factors.of("R.M", Set.of(), 1, true).value(), sore, 1e-9);
    assertEquals(
        factors.of("L.M", Set.of(), 1, true).value(),
        factors.of("L.M", Set.of("hold"), 1, true).value(),
        1e-9,
        "the hand that does not hurt");
  }

  @Test
  void aStickIsAlsoTwoLinesAndFourDirections() {
    Set<String> inputs = inputs(of("GC2", "JOY_DESK"));
    for (String part : List.of("", ".across", ".along", ".up", ".left", ".down", ".right")) {
      assertTrue(inputs.contains("JOY_DESK/stick" + part), part);
    }
  }

  @Test
  void aPlanIsWithheldWhereSuggestionsAre() {
    Player stopped =
        Player.gold(
            "GC1", f -> f.put("safe.progNeuro", new FlatValue.Text("unchecked", Where.file("x"))));
    assertTrue(stopped.advice().withheld());
    assertEquals(Optional.empty(), stopped.maybePlanning(java.util.Map.of()).map(p -> "plan"));
  }
}
