package closehand.strain;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import closehand.bank.Problem;
import closehand.bank.Where;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** The load of invented plans: who has most to do, what is said about it, what it blocks. */
class PlanLoadTest {
  private static final PlayTime AN_HOUR = new PlayTime(1, 3);

  static Use use(String name, String part, double perMinute, double seconds) {
    Use.Kind kind = seconds < 0.5 ? Use.Kind.TAP : Use.Kind.HOLD;
    return new Use(name, name, kind, new Exertion(part, 0.1, perMinute, seconds), List.of());
  }

  /** Invented: the right thumb fires, the index holds, the left foot does a little. */
  static PlanLoad busyThumb() {
    return PlanLoad.of(
        "An invented game",
        List.of(
            use("fire", "R.T", 40, 0.2),
            use("jump", "R.T", 6, 0.2),
            use("walk", "R.I", 2, 10),
            use("talk", "L.foot", 3, 2)),
        Body.UNKNOWN,
        AN_HOUR);
  }

  @Test
  void theHeaviestPartIsNamedFirstWithTheActionThatCountsMost() {
    PlanLoad load = busyThumb();
    assertEquals(
        List.of("R.T", "R.I", "L.foot"),
        load.effectors().stream().map(EffectorReading::effector).toList());
    EffectorReading thumb = load.heaviest().orElseThrow();
    assertEquals("fire", thumb.heaviestUse(load.body(), 1).orElseThrow().name());
    assertEquals(46.0 / 60, thumb.heaviness(), 1e-12);
    assertEquals(6.0 / 60, thumb.without(thumb.uses().get(0), load.body(), 1), 1e-12);
  }

  /** Invented: the left thumb presses seldom and hard, the right index finger often and lightly. */
  private static PlanLoad hardThumb() {
    return PlanLoad.of(
        "g",
        List.of(
            new Use("a", "a", Use.Kind.TAP, new Exertion("L.T", 0.95, 12, 0.2), List.of()),
            new Use("b", "b", Use.Kind.TAP, new Exertion("R.I", 0.1, 25, 0.2), List.of())),
        new Body(Map.of("L.T", 0.95, "R.I", 0.1), Map.of()),
        AN_HOUR);
  }

  @Test
  void hardPressesMakeAPartHeavyHoweverFewTheyAre() {
    PlanLoad load = hardThumb();
    EffectorReading thumb = load.heaviest().orElseThrow();
    assertEquals("L.T", thumb.effector());
    assertEquals(Band.LOWER, thumb.light().figure().orElseThrow().band());
    assertEquals(Band.UPPER, thumb.band());
    assertEquals(thumb.index(), thumb.heavier());
    assertTrue(thumb.heaviness() > 1);
    assertFalse(LoadWords.light(thumb).contains("has room"), LoadWords.light(thumb));
    assertEquals("green: has room", LoadWords.light(load.effectors().get(1)));
  }

  /** No finger is heavy alone, but together they put the hand into its upper band. */
  @Test
  void ofAHeavyHandThePartThatBringsMostIsNamed() {
    List<Use> uses = new ArrayList<>();
    uses.add(use("far", "L.foot", 28, 0.2));
    for (String finger : List.of("R.T", "R.I", "R.M", "R.R")) {
      double effort = finger.equals("R.M") ? 0.4 : 0.35;
      uses.add(
          new Use(finger, finger, Use.Kind.TAP, new Exertion(finger, effort, 10, 0.2), List.of()));
    }
    PlanLoad load = PlanLoad.of("g", uses, Body.UNKNOWN, AN_HOUR);
    assertTrue(load.effectors().stream().noneMatch(e -> e.band() == Band.UPPER), "none alone");
    assertEquals("L.foot", load.effectors().get(0).effector());
    assertEquals("R.M", load.heaviest().orElseThrow().effector());
    assertTrue(load.isOfAHeavyHand("R.T"));
    assertFalse(load.isOfAHeavyHand("L.foot"));
  }

  @Test
  void handsAreReadApartAndNeverAveraged() {
    PlanLoad load = busyThumb();
    assertEquals(1, load.hands().size());
    assertEquals(BodyPart.Hand.RIGHT, load.hands().get(0).hand());
    assertEquals(48.0 / 51, load.hands().get(0).pressShare(), 1e-12);
    PlanLoad both =
        PlanLoad.of(
            "g", List.of(use("a", "R.T", 40, 0.2), use("b", "L.T", 2, 0.2)), Body.UNKNOWN, AN_HOUR);
    assertEquals(2, both.hands().size());
    assertTrue(
        both.hands().get(1).composite().amount().orElseThrow()
            > 5 * both.hands().get(0).composite().amount().orElseThrow());
    assertEquals(both.hands().get(1).composite().amount().orElseThrow(), both.heavierHand(), 0);
  }

  private static List<String> codes(PlanLoad load) {
    return load.cautions().stream().map(LoadCaution::code).toList();
  }

  @Test
  void cautionsComeFromFiguresAndBringThem() {
    PlanLoad load = busyThumb();
    assertEquals(List.of(LoadCaution.REPEAT, LoadCaution.STATIC, LoadCaution.OVERUSE), codes(load));
    assertEquals(
        "your right thumb makes 46 presses a minute (up to 30 is green)",
        load.cautions().get(0).because());
    assertEquals(
        "your right index finger holds for 33 % of play (up to 25 % is green)",
        load.cautions().get(1).because());
    assertEquals(
        "your right hand makes 94 % of all presses (from 75 %)", load.cautions().get(2).because());
  }

  @Test
  void aCalmPlanRaisesNothing() {
    PlanLoad calm =
        PlanLoad.of("g", List.of(use("a", "R.T", 5, 0.2)), Body.UNKNOWN, new PlayTime(0.5, 2));
    assertEquals(List.of(), calm.cautions());
    assertEquals(List.of(), calm.blocking(List.of()));
    assertEquals(Band.LOWER, calm.heaviest().orElseThrow().light().figure().orElseThrow().band());
  }

  @Test
  void longDaysAskForBreaks() {
    PlanLoad load =
        PlanLoad.of("g", List.of(use("a", "R.T", 5, 0.2)), Body.UNKNOWN, new PlayTime(1.5, 2));
    assertEquals(List.of(LoadCaution.BREAK), codes(load));
    assertEquals("you plan 1.5 hours of play a day", load.cautions().get(0).because());
  }

  @Test
  void ownTappingMakesTheSamePressesHeavier() {
    List<Use> uses = List.of(use("a", "R.T", 18, 0.2));
    Body slow = new Body(Map.of(), Map.of("R.T", 7.0));
    assertEquals(List.of(), PlanLoad.of("g", uses, Body.UNKNOWN, AN_HOUR).cautions());
    PlanLoad load = PlanLoad.of("g", uses, slow, AN_HOUR);
    assertEquals(
        "your right thumb makes 18 presses a minute, 43 % of its fastest tapping (up to 20 % is"
            + " green)",
        load.cautions().get(0).because());
  }

  @Test
  void redBlocksUnlessAClinicianAcceptsByNameAndReason() {
    PlanLoad red = PlanLoad.of("g", List.of(use("a", "R.T", 70, 0.2)), Body.UNKNOWN, AN_HOUR);
    assertEquals(1, red.blocking(List.of()).size());
    List<Problem> problems = new ArrayList<>();
    Where where = Where.file("plan");
    assertTrue(Accepted.of(where, "R.T", "", "short bursts", problems).isEmpty());
    assertTrue(Accepted.of(where, "R.T", "A. Clinician", " ", problems).isEmpty());
    assertTrue(Accepted.of(where, "thumb", "A. Clinician", "short bursts", problems).isEmpty());
    assertEquals(3, problems.size());
    Accepted other =
        Accepted.of(where, "L.T", "A. Clinician", "short bursts", problems).orElseThrow();
    assertEquals(1, red.blocking(List.of(other)).size());
    Accepted right =
        Accepted.of(where, "R.T", "A. Clinician", "short bursts", problems).orElseThrow();
    assertEquals(List.of(), red.blocking(List.of(right)));
  }

  @Test
  void whatCannotBeIsOutsideAndBlocks() {
    PlanLoad impossible =
        PlanLoad.of(
            "g", List.of(use("a", "R.T", 3, 15), use("b", "R.T", 10, 2)), Body.UNKNOWN, AN_HOUR);
    EffectorReading thumb = impossible.heaviest().orElseThrow();
    assertTrue(thumb.light() instanceof Load.Outside);
    assertTrue(thumb.isRed());
    assertEquals(1, impossible.blocking(List.of()).size());
    assertEquals(Double.POSITIVE_INFINITY, impossible.heavierHand(), 0);
  }

  @Test
  void jobsSharedByBothHandsMakeTheHeavierHandLighter() {
    PlanLoad shared =
        PlanLoad.of(
            "shared",
            List.of(use("a", "R.T", 20, 0.2), use("b", "L.T", 20, 0.2)),
            Body.UNKNOWN,
            AN_HOUR);
    PlanLoad single =
        PlanLoad.of(
            "single",
            List.of(use("a", "R.T", 20, 0.2), use("b", "R.T", 20, 0.2)),
            Body.UNKNOWN,
            AN_HOUR);
    assertTrue(shared.heavierHand() < single.heavierHand());
  }

  @Test
  void theOrderOfActionsChangesNothing() {
    List<Use> uses = new ArrayList<>();
    Dice dice = new Dice(7);
    for (String part : List.of("R.T", "R.I", "R.M", "L.T", "L.foot", "voice")) {
      for (int i = 0; i < 3; i++) {
        uses.add(new Use(part + i, part + i, Use.Kind.HOLD, dice.press(part, 15), List.of()));
      }
    }
    PlanLoad before = PlanLoad.of("g", uses, Body.UNKNOWN, AN_HOUR);
    for (int turn = 1; turn < uses.size(); turn++) {
      Collections.rotate(uses, 1);
      PlanLoad after = PlanLoad.of("g", uses, Body.UNKNOWN, AN_HOUR);
      assertEquals(before.heavierHand(), after.heavierHand(), 0);
      assertEquals(codes(before), codes(after));
      for (int i = 0; i < before.effectors().size(); i++) {
        assertEquals(before.effectors().get(i).light(), after.effectors().get(i).light());
        assertEquals(before.effectors().get(i).index(), after.effectors().get(i).index());
      }
    }
  }

  @Test
  void effortIsThePersonsOwnOrAStandInThatIsSaid() {
    assertTrue(busyThumb().flags().contains(Flag.EFFORT_NOT_RATED));
    Body rated = new Body(Map.of("R.T", 0.4), Map.of());
    List<Use> thumb = List.of(use("a", "R.T", 5, 0.2));
    assertFalse(PlanLoad.of("g", thumb, rated, AN_HOUR).flags().contains(Flag.EFFORT_NOT_RATED));
    List<Use> both = List.of(use("a", "R.T", 5, 0.2), use("b", "R.I", 5, 0.2));
    assertTrue(PlanLoad.of("g", both, rated, AN_HOUR).flags().contains(Flag.EFFORT_NOT_RATED));
    assertEquals(0.4, rated.effortFor("R.T", 3), 0);
    assertEquals(0.3, rated.effortFor("R.I", 3), 1e-12);
    assertEquals(1, Body.UNKNOWN.effortFor("R.I", 60), 0);
  }

  @Test
  void aRatingIsReadOrToldWithWhatIsPossible() {
    List<Problem> problems = new ArrayList<>();
    Where where = Where.file("--effort");
    Body body = Body.UNKNOWN.rated(where, "R.T", 3, problems);
    assertEquals(0.3, body.effortFor("R.T", 1), 1e-12);
    assertEquals(List.of(), problems);
    assertEquals(body, body.rated(where, "R.T", 11, problems));
    assertEquals(body, body.rated(where, "R.T", Double.NaN, problems));
    assertEquals(body, body.rated(where, "thumb", 3, problems));
    assertEquals(3, problems.size());
  }

  @Test
  void theGamesOfADayAddUpForEachHand() {
    PlanLoad one = busyThumb();
    DayLoad alone = DayLoad.of(List.of(one));
    assertEquals(one.hands().get(0).composite().amount().orElseThrow(), right(alone), 1e-9);
    DayLoad twice = DayLoad.of(List.of(one, one));
    assertEquals(
        right(alone),
        right(twice),
        1e-9,
        "the same game in two halves of the time is the same day");
    assertFalse(alone.hands().containsKey(BodyPart.Hand.LEFT));
  }

  private static double right(DayLoad day) {
    return Optional.ofNullable(day.hands().get(BodyPart.Hand.RIGHT))
        .flatMap(l -> l.figure())
        .orElseThrow()
        .value();
  }
}
