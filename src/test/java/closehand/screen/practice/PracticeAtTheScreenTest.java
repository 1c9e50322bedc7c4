package closehand.screen.practice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import closehand.bank.StopSign;
import closehand.measure.CoreStops;
import closehand.measure.practice.Findings;
import closehand.measure.practice.PracticeRun;
import closehand.measure.practice.Sheet;
import closehand.measure.practice.SimulatedPlayer;
import closehand.measure.practice.StopReason;
import closehand.report.Glyphs;
import closehand.screen.frame.Guards;
import closehand.screen.terminal.ScreenDriver;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Practice typed at a terminal that exists in memory, with the real key decoder. */
class PracticeAtTheScreenTest {
  private static final Sheet SHEET = SomeDesk.SHEET;

  private final SomeDesk desk = new SomeDesk();
  private final PracticeFace face = new PracticeFace(desk, Glyphs.UNICODE, Guards.USUAL);
  private final ScreenDriver screen = ScreenDriver.open(face, 80, 24);

  private void begin() {
    screen.press("2", "2", "1").expectWords("Wait for the next name.");
  }

  private Sheet.Job asked() {
    return named(screen.passUntilDue().expectLine("Press:").words());
  }

  private String key(Sheet.Job job) {
    return SHEET.target(job.action()).signal().name();
  }

  @Test
  void aWholeRunAtTheTerminalFindsTheTruthWithinTheStatedError() {
    int near = 0;
    int all = 0;
    for (long seed = 0; seed < 8; seed++) {
      SomeDesk one = new SomeDesk();
      SimulatedPlayer player =
          new SimulatedPlayer(SHEET.targets().stream().map(Sheet.Target::input).toList(), seed);
      practised(one, player);
      assertEquals(PracticeRun.Stage.DONE, one.finished.get(0).stage());
      for (Findings.OfInput input : one.findings.inputs()) {
        double truth = player.truth(input.input()).missShare();
        all++;
        near +=
            Math.abs(input.missShare().value() - truth) <= 2 * input.missShare().error() ? 1 : 0;
      }
    }
    assertTrue(near >= 0.93 * all, near + " of " + all);
  }

  /** Plays by the screen alone: looks for the name, presses the key the player would. */
  private static void practised(SomeDesk desk, SimulatedPlayer player) {
    PracticeFace face = new PracticeFace(desk, Glyphs.UNICODE, Guards.USUAL);
    practised(desk, ScreenDriver.open(face, 80, 24), player);
  }

  private static void practised(SomeDesk desk, ScreenDriver screen, SimulatedPlayer player) {
    screen.press("2", "2", "1");
    int round = 0;
    while (desk.finished.isEmpty()) {
      String words = screen.words();
      if (words.contains("Press:")) {
        Sheet.Job job = named(words);
        SimulatedPlayer.Answer answer = player.answer(SHEET, job, round);
        screen.after(answer.millis(), answer.signal().name());
      } else if (words.contains("Wait for the next name")) {
        screen.passUntilDue();
      } else if (words.contains("How much does it hurt")) {
        round++;
        screen.pass(2_000).press("2");
      } else {
        screen.pass(40_000).press("1");
      }
    }
  }

  private static Sheet.Job named(String words) {
    String name = words.replaceAll(".*Press: (Action [0-9]+).*|.*then: (Action [0-9]+).*", "$1$2");
    return SHEET.jobs().stream()
        .filter(j -> j.name().equals(name))
        .findFirst()
        .orElseThrow(() -> new AssertionError(words));
  }

  @Test
  void stopPainIsOnEveryScreenAndBackspaceIsEnough() {
    begin();
    screen.expectLine("Backspace stop: pain, or a rest");
    screen.passUntilDue().expectLine("Backspace stop: pain, or a rest");
    screen
        .press("Backspace")
        .expectLine("What is it?")
        .expectWords("Pain has gone up by 2 points or more");
    screen.press("2").expectWords("STOPPED. Pain has gone up");
    assertEquals(Optional.of(StopReason.of(StopSign.PAIN)), desk.finished.get(0).stop());
    screen.expectWords("Practice is not repeated today.");
  }

  @ParameterizedTest
  @CsvSource({
    "2,PAIN",
    "31,NUMB",
    "32,FAINT",
    "33,CHEST",
    "34,SPASM",
    "35,SKIN",
    "36,BALANCE",
    "4,WISH",
    "5,DISTRESS",
    "6,ALONE"
  })
  void everyStopRuleIsTwoKeysAway(String keys, StopSign sign) {
    begin();
    screen.pass(3_000).press("Backspace");
    keys.codePoints().forEach(k -> screen.press(Character.toString(k)));
    assertEquals(Optional.of(StopReason.of(sign)), desk.finished.get(0).stop());
    screen.expectWords("STOPPED. " + CoreStops.all().words(sign));
  }

  @Test
  void onlyARestGoesOnWhereItWas() {
    begin();
    screen.pass(3_000).press("Backspace", "1").expectWords("Wait for the next name.");
    screen.pass(3_000).expectLine("Press:");
    assertTrue(desk.finished.isEmpty());
  }

  @ParameterizedTest
  @CsvSource({"paste", "window", "size"})
  void whatGetsInBetweenThrowsTheRoundAwayAndIsSaid(String what) {
    begin();
    Sheet.Job job = asked();
    screen.after(500, key(job));
    switch (what) {
      case "paste" -> screen.paste("abc");
      case "window" -> screen.send("\u001b[O");
      default -> screen.resize(60, 20);
    }
    screen.expectWords("This round is thrown away; nothing of it counts.");
  }

  @Test
  void aResizeOutsideARoundThrowsNothingAway() {
    screen.resize(40, 12).press("2").resize(80, 24).expectNoLine("thrown away");
  }

  @Test
  void aKeyHeldDownAtAPromptCountsOnceAndIsSaid() {
    begin();
    String key = key(asked());
    screen.after(500, key).after(660, key);
    for (int i = 0; i < 30; i++) {
      screen.after(40, key);
    }
    screen.expectWords("A key that is held down counts once.");
  }

  @Test
  void theTerminalGoneKeepsTheRoundsBeforeAndNothingOfThisOne() {
    SimulatedPlayer player = new SimulatedPlayer(List.of(), 1);
    begin();
    answerRound(player);
    screen.press("2").pass(40_000).press("1").pass(3_000);
    face.press(new closehand.screen.frame.Key.Closed());
    assertTrue(face.over());
    PracticeRun run = desk.finished.get(0);
    assertEquals(Optional.of(StopReason.CLOSED), run.stop());
    assertTrue(run.counted().stream().allMatch(t -> t.round() == 0));
    assertFalse(run.counted().isEmpty());
  }

  private void answerRound(SimulatedPlayer player) {
    while (!screen.words().contains("How much does it hurt")) {
      String words = screen.words();
      if (words.contains("Press:")) {
        screen.after(player.answer(SHEET, named(words), 0).millis(), key(named(words)));
      } else {
        screen.passUntilDue();
      }
    }
  }

  @Test
  void everyInputIsPressedOnceAndWhatCameIsToldAgainstThePlan() {
    screen.press("1").expectLine("cell 1, with your right thumb");
    screen.press("b", "a").expectWords("cell 2: the key a.");
    screen.press("c").hold("d", 6).expectWords("It is held down, or repeats.");
    screen.press("e").after(1_500, "e").after(30, "e");
    screen.pass(1_500);
    screen.send("\u001b[34~").press("Backspace").expectWords("Nothing comes from this input");
    screen.press("1").expectWords("cell 8: nothing came.");
    screen.send("\u001b[<0;5;5M\u001b[<0;5;5m").press("j", "k", "l");
    screen
        .expectWords("Nothing comes from: cell 8.")
        .expectWords("These send the same, the key e: cell 5; cell 6.")
        .expectWords("These two are swapped: cell 1 and cell 2.");
    screen.press("Space", "PageDown");
    String rest = screen.words();
    for (int i = 0; i < 6; i++) {
      rest += screen.press("PageDown").words();
    }
    assertTrue(rest.contains("cell 9 sends mouse button 1; the plan has the key i."), rest);
    assertTrue(rest.contains("cell 4 came again and again."), rest);
    assertTrue(rest.contains("cell 6 came twice at one press."), rest);
    assertTrue(rest.contains("cell 7 sends a key this program has no name for"), rest);
  }

  @ParameterizedTest
  @CsvSource({"1,Taken. Changes left: 0.", "2,Kept as it was."})
  void aChangeIsTakenOrLeft(String key, String said) {
    practised(desk, screen, new SimulatedPlayer(List.of(), 1));
    screen.expectWords("One change that practice speaks for:");
    screen.expectWords("\"Action 1\" moves from cell 2 to cell 3.");
    screen.press(key).expectWords(said).expectNoLine("One change that practice speaks for:");
    screen.press("0").expectOver(true);
  }

  @ParameterizedTest
  @CsvSource({"2,PAIN", "33,CHEST", "4,WISH"})
  void aStopInTheButtonCheckIsAskedAboutSaidAndKept(String keys, StopSign sign) {
    screen.press("1", "b", "Backspace", "9").expectLine("What is it?");
    assertTrue(desk.finished.isEmpty());
    keys.codePoints().forEach(k -> screen.press(Character.toString(k)));
    assertEquals(Optional.of(StopReason.of(sign)), desk.finished.get(0).stop());
    screen
        .expectWords("STOPPED. " + CoreStops.all().words(sign))
        .expectWords("Practice is not repeated today.");
  }

  @Test
  void aRestInTheButtonCheckGoesOnWhereItWas() {
    screen.press("1", "b", "Backspace", "9", "1").expectLine("cell 2, with your");
    screen.press("Backspace", "9", "3", "Backspace").expectLine("What is it?");
    screen.press("Backspace").expectWords("Button check: paused");
    assertTrue(desk.finished.isEmpty());
  }

  @Test
  void aTerminalThatClosesOnTheQuestionWhyKeepsTheStop() {
    screen.press("1", "b", "Backspace", "9");
    face.press(new closehand.screen.frame.Key.Closed());
    assertEquals(Optional.of(StopReason.of(StopSign.WISH)), desk.finished.get(0).stop());
    assertTrue(face.over());
  }
}
