package closehand.measure.practice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import closehand.bank.StopSign;
import closehand.measure.practice.PracticeRun.Stage;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** Stories of practice runs: what counts, what does not, and what ends one. */
class PracticeRunTest {
  private static final Sheet SHEET = SomeSheet.twelve();

  private long now = 10_000;
  private PracticeRun run = PracticeRun.of(SHEET, 1, 7, false, 720);

  private void then(Happening happening) {
    run = run.after(happening);
  }

  private void press(String key, long millisLater) {
    now += millisLater;
    then(new Happening.Pressed(Signal.key(key), now));
  }

  private void waitForPrompt() {
    now += run.waitMillis(now);
    then(new Happening.Elapsed(now));
    assertEquals(Stage.PROMPT, run.stage());
  }

  private String right() {
    return SHEET.target(run.asked().action()).signal().name();
  }

  private String wrong() {
    return right().equals("a") ? "l" : "a";
  }

  private void begin() {
    then(new Happening.PainTold(2, now));
    then(new Happening.Begun(now));
    assertEquals(Stage.BETWEEN, run.stage());
  }

  private void answerRound(int pain) {
    int round = run.at().round();
    while (run.at().round() == round) {
      waitForPrompt();
      do {
        press(right(), 600);
      } while (run.stage() == Stage.PROMPT);
    }
    then(new Happening.PainTold(pain, now));
  }

  @Test
  void fiveRoundsWithARestAfterEachAndNoTimeLimit() {
    begin();
    waitForPrompt();
    press(right(), 3_600_000L / 10);
    assertFalse(run.over());
    int rounds = 0;
    do {
      answerRound(2);
      rounds++;
      if (!run.over()) {
        assertEquals(Stage.RESTING, run.stage());
        now += 31_000;
        then(new Happening.Begun(now));
      }
    } while (!run.over());
    assertEquals(Prompts.ROUNDS, rounds);
    assertEquals(Stage.DONE, run.stage());
  }

  @Test
  void aRestIsNotCutShort() {
    begin();
    answerRound(2);
    now += 10_000;
    then(new Happening.Begun(now));
    assertEquals(Stage.RESTING, run.stage());
    assertEquals("Rest a little longer: about 20 seconds more.", run.said());
  }

  @Test
  void whoIsTiredRestsLonger() {
    run = PracticeRun.of(SHEET, 1, 7, true, 720);
    begin();
    answerRound(2);
    now += 31_000;
    then(new Happening.Begun(now));
    assertEquals(Stage.RESTING, run.stage());
  }

  @Test
  void anyKeyBetweenTwoPromptsPausesAndCountsForNothing() {
    begin();
    waitForPrompt();
    while (run.stage() == Stage.PROMPT) {
      press(right(), 500);
    }
    int before = run.going().size();
    press("x", 600);
    assertEquals(Stage.PAUSED, run.stage());
    assertTrue(run.said().contains("It does not count."));
    assertEquals(before, run.going().size());
    now += 5_000;
    then(new Happening.Begun(now));
    waitForPrompt();
    press(right(), 500);
    assertEquals(before + 1, run.going().size());
  }

  @Test
  void aPauseInsideAPromptForgetsThatPrompt() {
    begin();
    waitForPrompt();
    Cue asked = run.cue();
    then(new Happening.Paused());
    assertEquals(Stage.PAUSED, run.stage());
    then(new Happening.Begun(now + 9_000));
    now += 9_000;
    waitForPrompt();
    assertEquals(asked, run.cue());
    press(right(), 700);
    assertEquals(700, run.going().get(0).millis().orElseThrow());
  }

  /** First repeat and further repeats of a held key, as systems set them. */
  @ParameterizedTest
  @CsvSource({"250,20", "250,33", "500,30", "660,40", "1000,50", "1000,500"})
  void aHeldKeyCountsOnceWhateverItsRepeat(long first, long further) {
    begin();
    waitForPrompt();
    while (run.cue().actions().size() > 1) {
      press(right(), 500);
      press(right(), 500);
      waitForPrompt();
    }
    int before = run.going().size();
    String held = right();
    press(held, 500);
    press(held, first);
    for (int i = 0; i < 100; i++) {
      long due = run.waitMillis(now);
      if (due >= 0 && due <= further) {
        then(new Happening.Elapsed(now + due));
      }
      press(held, further);
    }
    assertEquals(before + 1, run.going().size());
    assertEquals(Stage.BETWEEN, run.stage());
    assertTrue(run.going().get(before).marks().held());
    assertEquals("A key that is held down counts once.", run.said());
    waitForPrompt();
    press(right(), 500);
    assertTrue(run.going().get(before + 1).hit());
  }

  @Test
  void aKeyThatBouncesCountsOnce() {
    begin();
    waitForPrompt();
    String key = right();
    press(key, 500);
    if (run.stage() == Stage.PROMPT) {
      press(right(), 500);
    }
    int before = run.going().size();
    String last = run.moments().last().orElseThrow().name();
    press(last, 30);
    assertEquals(before, run.going().size());
    assertTrue(run.going().get(before - 1).marks().bounced());
    assertEquals("That key came twice at once. It counts once.", run.said());
  }

  @Test
  void aNeighbourPressedAlongIsNoticedAndDoesNotCount() {
    begin();
    waitForPrompt();
    while (run.stage() == Stage.PROMPT) {
      press(right(), 500);
    }
    int before = run.going().size();
    press(run.moments().last().orElseThrow().name().equals("k") ? "j" : "k", 60);
    assertEquals(before, run.going().size());
    assertTrue(run.going().get(before - 1).marks().along());
    assertEquals(Stage.BETWEEN, run.stage());
  }

  @Test
  void aWrongNeighbourIsToldApartFromAKeyOfNowhere() {
    begin();
    waitForPrompt();
    Sheet.Target wanted = SHEET.target(run.asked().action());
    Sheet.Target beside =
        SHEET.targets().stream()
            .filter(t -> t.place().isBeside(wanted.place()))
            .findFirst()
            .orElseThrow();
    press(beside.signal().name(), 400);
    Try one = run.going().get(0);
    assertFalse(one.hit());
    assertEquals(Optional.of(beside.input()), one.wrong());
    assertTrue(one.beside());
    assertEquals("That was: " + beside.name() + ".", run.said());
    waitForPrompt();
    press("#", 400);
    assertEquals(Optional.empty(), run.going().get(1).wrong());
  }

  @Test
  void whatComesBeforeAnybodyCouldAnswerIsAskedAgain() {
    begin();
    waitForPrompt();
    int cues = run.rounds().get(0).size();
    press(right(), 40);
    assertEquals(0, run.going().size());
    assertEquals(cues + 1, run.rounds().get(0).size());
    assertTrue(run.said().startsWith("That came too soon"));
  }

  @ParameterizedTest
  @EnumSource(
      value = Happening.What.class,
      names = {"PASTE", "WINDOW", "SIZE"})
  void aDisturbedRoundIsThrownAwayWholeAndThatIsSaid(Happening.What what) {
    begin();
    for (int i = 0; i < 3; i++) {
      waitForPrompt();
      press(right(), 500);
      if (run.stage() == Stage.PROMPT) {
        press(right(), 500);
      }
    }
    then(new Happening.Disturbed(what));
    assertEquals(Stage.READY, run.stage());
    assertEquals(List.of(), run.going());
    assertEquals(List.of(), run.counted());
    assertTrue(run.said().endsWith("This round is thrown away; nothing of it counts."));
    now += 5_000;
    then(new Happening.Begun(now));
    answerRound(2);
    assertEquals(
        run.rounds().get(0).size(),
        run.counted().stream().map(Try::action).count()
            - run.rounds().get(0).stream().filter(c -> c.actions().size() > 1).count());
  }

  @Test
  void outsideARoundNothingCanDisturb() {
    then(new Happening.Disturbed(Happening.What.SIZE));
    assertEquals(Stage.ASKING, run.stage());
    assertEquals("", run.said());
  }

  @Test
  void whenTheTerminalGoesTheRoundsBeforeStayAndThisOneDoesNot() {
    begin();
    answerRound(2);
    int counted = run.counted().size();
    now += 40_000;
    then(new Happening.Begun(now));
    waitForPrompt();
    press(right(), 500);
    then(new Happening.Disturbed(Happening.What.CLOSED));
    assertEquals(Optional.of(StopReason.CLOSED), run.stop());
    assertEquals(counted, run.counted().size());
    assertEquals(List.of(), run.going());
  }

  @ParameterizedTest
  @EnumSource(StopSign.class)
  void everyStopRuleEndsTheRunAtOnceWhateverIsGoingOn(StopSign sign) {
    begin();
    waitForPrompt();
    press(right(), 500);
    then(new Happening.Stopped(StopReason.of(sign)));
    assertEquals(Stage.STOPPED, run.stage());
    assertEquals(Optional.of(StopReason.of(sign)), run.stop());
    assertEquals(List.of(), run.going());
    PracticeRun stopped = run;
    press("a", 2_000);
    then(new Happening.Begun(now));
    then(new Happening.PainTold(0, now));
    assertEquals(stopped, run);
  }

  @ParameterizedTest
  @CsvSource({"2,4", "0,2", "5,7", "6,7", "6,10"})
  void painThatRisesByTwoOrReachesSevenStops(int before, int after) {
    then(new Happening.PainTold(before, now));
    then(new Happening.Begun(now));
    answerRound(after);
    assertEquals(Optional.of(StopReason.of(StopSign.PAIN)), run.stop());
  }

  @Test
  void painThatStaysAboutAsItWasDoesNotStop() {
    then(new Happening.PainTold(3, now));
    then(new Happening.Begun(now));
    answerRound(4);
    assertEquals(Stage.RESTING, run.stage());
  }

  @Test
  void withPainOfSevenNothingBegins() {
    then(new Happening.PainTold(7, now));
    assertEquals(Optional.of(StopReason.of(StopSign.PAIN)), run.stop());
  }

  @Test
  void threeRoundsThatDoNotComeOffEndIt() {
    begin();
    for (int i = 0; i < 3; i++) {
      then(new Happening.Disturbed(Happening.What.WINDOW));
      then(new Happening.Begun(now));
    }
    assertEquals(Optional.of(StopReason.of(StopSign.DISTRESS)), run.stop());
  }

  @Test
  void threeRoundsWithMoreMissesThanHitsEndItToo() {
    begin();
    while (!run.over()) {
      if (run.stage() == Stage.BETWEEN) {
        waitForPrompt();
      } else if (run.stage() == Stage.PROMPT) {
        press(wrong(), 500);
      } else if (run.stage() == Stage.ASKING) {
        then(new Happening.PainTold(2, now));
      } else {
        now += 60_000;
        then(new Happening.Begun(now));
      }
    }
    assertEquals(Optional.of(StopReason.of(StopSign.DISTRESS)), run.stop());
    assertEquals(3, run.counted().stream().mapToInt(Try::round).distinct().count());
  }

  @Test
  void twelveMinutesOfWorkAreEnough() {
    begin();
    while (!run.over()) {
      waitForPrompt();
      press(right(), 60_000);
      while (run.stage() == Stage.PROMPT) {
        press(right(), 60_000);
      }
    }
    assertEquals(Optional.of(StopReason.TIME), run.stop());
  }

  @Test
  void theOrderOfPromptsFollowsFromTheSeedAlone() {
    assertEquals(Prompts.of(SHEET, 1, 5), Prompts.of(SHEET, 1, 5));
    Set<List<List<Cue>>> different = new HashSet<>();
    for (long seed = 0; seed < 20; seed++) {
      different.add(Prompts.of(SHEET, 1, seed));
    }
    assertEquals(20, different.size());
    assertNotEquals(Prompts.of(SHEET, 1, 1).get(0), Prompts.of(SHEET, 1, 1).get(1));
  }

  @Test
  void everyActionComesInEveryRoundAndWhatTheGameAsksOftenComesMoreOften() {
    for (List<Cue> round : Prompts.of(SHEET, 1, 3)) {
      for (Sheet.Job job : SHEET.jobs()) {
        assertTrue(round.contains(Cue.of(job.action())), job.action());
      }
      long often = round.stream().filter(Cue.of("act11")::equals).count();
      long seldom = round.stream().filter(Cue.of("act0")::equals).count();
      assertTrue(often > seldom);
      assertTrue(round.stream().anyMatch(c -> c.actions().size() == 2));
    }
  }

  @Test
  void secondMeaningsComeFromTheThirdWeekOn() {
    Sheet layered = SomeSheet.layered();
    Cue far = Cue.of("far");
    assertTrue(Prompts.of(layered, 2, 1).stream().noneMatch(r -> r.contains(far)));
    assertTrue(Prompts.of(layered, 3, 1).stream().allMatch(r -> r.contains(far)));
  }
}
