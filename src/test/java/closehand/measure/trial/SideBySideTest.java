package closehand.measure.trial;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import closehand.bank.StopSign;
import closehand.measure.statistics.Verdict;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;

/** Two set-ups side by side. All trials are invented. */
class SideBySideTest {
  private static final SetUp PAD =
      new SetUp(
          "pad", OptionalInt.of(2), Optional.of(SetUp.Cost.SOME), Optional.of(SetUp.Weight.LIGHT));
  private static final SetUp MOUSE =
      new SetUp(
          "mouse",
          OptionalInt.of(9),
          Optional.of(SetUp.Cost.LITTLE),
          Optional.of(SetUp.Weight.HEAVY));

  private static Trial trial(SetUp setUp, int worked, int painRise) {
    return trial(setUp, worked, painRise, Optional.empty());
  }

  private static Trial trial(SetUp setUp, int worked, int painRise, Optional<StopSign> stopped) {
    List<Tries> actions = new ArrayList<>();
    for (String action : List.of("steer", "brake", "boost")) {
      actions.add(
          new Tries(action, stopped.isPresent() ? OptionalInt.empty() : OptionalInt.of(worked)));
    }
    return Trial.begun("2026-11-25")
        .with(setUp)
        .with(new Trial.Scene("moon race", "lap"))
        .withActions(actions)
        .feeling(
            Felt.UNSAID.withPain(1),
            OptionalInt.empty(),
            Felt.UNSAID.withPain(1 + painRise).withEffort(3))
        .lasting(OptionalInt.of(12), OptionalInt.of(7), "")
        .ended(stopped, true);
  }

  /** Taken in turn, the pad first. */
  private static List<Trial> inTurn(int[] pad, int[] mouse, int padPain, int mousePain) {
    List<Trial> all = new ArrayList<>();
    for (int i = 0; i < pad.length; i++) {
      all.add(trial(PAD, pad[i], padPain + (i == 0 && padPain > 0 ? 1 : 0)));
      all.add(trial(MOUSE, mouse[i], mousePain + (i == 0 && mousePain > 0 ? 1 : 0)));
    }
    return all;
  }

  private static SideBySide.Choice choice(List<Trial> trials) {
    return SideBySide.of(trials, "pad", "mouse").choice();
  }

  @Test
  void moreThatWorkedLeads() {
    SideBySide both =
        SideBySide.of(inTurn(new int[] {4, 5, 4, 5}, new int[] {8, 7, 8, 8}, 0, 0), "pad", "mouse");
    assertEquals(
        new SideBySide.Choice(Optional.of(Verdict.Side.SECOND), SideBySide.Why.SUCCESS),
        both.choice());
    assertEquals(List.of("steer", "brake", "boost"), both.actions());
    assertTrue(both.warnings().isEmpty(), both.warnings().toString());
  }

  @Test
  void aTieGoesToTheCheaperThenTheLighterThenTheQuicker() {
    int[] same = {7, 6, 7, 8};
    assertEquals(
        new SideBySide.Choice(Optional.of(Verdict.Side.SECOND), SideBySide.Why.CHEAPER),
        choice(inTurn(same, same, 0, 0)));
    SetUp asCheap = new SetUp("mouse", OptionalInt.of(9), PAD.cost(), MOUSE.weight());
    assertEquals(
        new SideBySide.Choice(Optional.of(Verdict.Side.FIRST), SideBySide.Why.LIGHTER),
        choice(with(asCheap, inTurn(same, same, 0, 0))));
    SetUp asLight = new SetUp("mouse", OptionalInt.of(9), PAD.cost(), PAD.weight());
    assertEquals(
        new SideBySide.Choice(Optional.of(Verdict.Side.FIRST), SideBySide.Why.QUICKER),
        choice(with(asLight, inTurn(same, same, 0, 0))));
    assertEquals(
        new SideBySide.Choice(Optional.empty(), SideBySide.Why.NOTHING),
        choice(with(SetUp.named("mouse"), inTurn(same, same, 0, 0))));
  }

  private static List<Trial> with(SetUp mouse, List<Trial> trials) {
    return trials.stream().map(t -> t.setUp().name().equals("mouse") ? t.with(mouse) : t).toList();
  }

  @Test
  void lessPainBreaksATieBeforeThePriceDoes() {
    int[] same = {7, 6, 7, 8};
    assertEquals(
        new SideBySide.Choice(Optional.of(Verdict.Side.FIRST), SideBySide.Why.PAIN),
        choice(inTurn(same, same, 0, 1)));
  }

  @Test
  void whatWorksBetterAndHurtsMoreIsNotPutFirst() {
    assertEquals(
        new SideBySide.Choice(Optional.empty(), SideBySide.Why.PAIN_AGAINST),
        choice(inTurn(new int[] {4, 5, 4, 5}, new int[] {8, 7, 8, 8}, 0, 1)));
    List<Trial> stopped =
        new ArrayList<>(inTurn(new int[] {4, 5, 4, 5}, new int[] {8, 7, 8, 8}, 0, 0));
    stopped.add(trial(MOUSE, 0, 0, Optional.of(StopSign.SPASM)));
    assertEquals(SideBySide.Why.PAIN_AGAINST, choice(stopped).why(), "a stop speaks too");
    stopped.set(stopped.size() - 1, trial(MOUSE, 0, 0, Optional.of(StopSign.WISH)));
    assertEquals(SideBySide.Why.SUCCESS, choice(stopped).why(), "a wish to stop does not");
  }

  @Test
  void threeEachAreTooFew() {
    assertEquals(
        new SideBySide.Choice(Optional.empty(), SideBySide.Why.TOO_FEW),
        choice(inTurn(new int[] {1, 1, 1}, new int[] {9, 9, 9}, 0, 0)));
  }

  @Test
  void whatMakesItLessFairIsSaid() {
    List<Trial> oneAfterTheOther = new ArrayList<>();
    for (int worked : new int[] {1, 2, 3, 4}) {
      oneAfterTheOther.add(trial(PAD, worked, 0));
    }
    for (int worked : new int[] {6, 7, 8, 9}) {
      oneAfterTheOther.add(trial(MOUSE, worked, 0));
    }
    SideBySide both = SideBySide.of(oneAfterTheOther, "pad", "mouse");
    assertEquals(List.of(SideBySide.Warning.NOT_IN_TURN), both.warnings());
    assertTrue(both.success().mayBePractice());
    oneAfterTheOther.add(
        trial(MOUSE, 7, 0)
            .with(new Trial.Scene("moon race", "night"))
            .lasting(OptionalInt.of(40), OptionalInt.empty(), ""));
    assertEquals(
        List.of(
            SideBySide.Warning.NOT_IN_TURN,
            SideBySide.Warning.OTHER_SCENE,
            SideBySide.Warning.OTHER_LENGTH),
        SideBySide.of(oneAfterTheOther, "pad", "mouse").warnings());
    oneAfterTheOther.add(
        trial(MOUSE, 7, 0).withActions(List.of(new Tries("jump", OptionalInt.of(5)))));
    assertTrue(
        SideBySide.of(oneAfterTheOther, "pad", "mouse")
            .warnings()
            .contains(SideBySide.Warning.NO_COMMON_ACTION));
  }

  @Test
  void abbaIsInTurn() {
    List<Trial> abba =
        List.of(
            trial(PAD, 5, 0),
            trial(MOUSE, 6, 0),
            trial(MOUSE, 6, 0),
            trial(PAD, 5, 0),
            trial(PAD, 5, 0),
            trial(MOUSE, 6, 0),
            trial(MOUSE, 6, 0),
            trial(PAD, 5, 0));
    assertTrue(SideBySide.of(abba, "pad", "mouse").warnings().isEmpty());
  }
}
