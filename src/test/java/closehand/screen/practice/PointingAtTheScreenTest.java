package closehand.screen.practice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import closehand.bank.StopSign;
import closehand.measure.CoreStops;
import closehand.measure.practice.PointingFindings;
import closehand.measure.practice.PointingTask;
import closehand.measure.practice.StopReason;
import closehand.report.Glyphs;
import closehand.screen.frame.Guards;
import closehand.screen.frame.Showing.Report;
import closehand.screen.terminal.ScreenDriver;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Pointing at a terminal that exists in memory, by mouse reports and by arrow keys. */
class PointingAtTheScreenTest {
  private final List<PointingTask> finished = new ArrayList<>();
  private final PointingFace face =
      new PointingFace(
          List.of("mouse", "arrow keys"),
          t -> {
            finished.add(t);
            return PointingFindings.of(t).words();
          },
          CoreStops.all(),
          720,
          Glyphs.UNICODE,
          Guards.USUAL);
  private final ScreenDriver screen = ScreenDriver.open(face, 80, 24);

  /** The column in the middle of the target that says "here". */
  private int here() {
    String line = screen.lines().stream().filter(l -> l.contains("here")).findFirst().orElseThrow();
    return line.indexOf("here") + 2;
  }

  private void click(int column) {
    screen.send("\u001b[<0;" + (column + 1) + ";12M\u001b[<0;" + (column + 1) + ";12m");
  }

  private void byMouse() {
    int shift = 0;
    while (screen.words().contains("here")) {
      click(here() + (shift++ % 3 - 1) * 2);
    }
  }

  private void byKeys() {
    int at = 40;
    int shift = 0;
    while (screen.words().contains("here")) {
      int to = here() + shift++ % 3 - 1;
      String key = to > at ? "\u001b[C" : "\u001b[D";
      screen.after(900, key.repeat(Math.abs(to - at))).after(100, "\r");
      at = to;
    }
  }

  @Test
  void bothWaysInTurnAndTheMouseIsReportedOnlyWhileSomebodyPoints() {
    assertEquals(Set.of(Report.FOCUS), face.reports());
    screen.press("2").expectLine("Now with: mouse").press("1");
    assertTrue(face.reports().contains(Report.POINTER));
    byMouse();
    assertEquals(Set.of(Report.FOCUS), face.reports());
    screen.press("2").expectLine("Now with: arrow keys").press("1");
    byKeys();
    screen.press("2").expectLine("Now with: arrow keys").press("1");
    byKeys();
    screen.press("2").expectLine("Now with: mouse").press("1");
    byMouse();
    screen.press("2").expectWords("What came of it").expectWords("mouse:");
    assertEquals(PointingTask.Stage.DONE, finished.get(0).stage());
    assertEquals(48 * 2, finished.get(0).counted().size());
    screen.press("Space", "PageDown", "0").expectOver(true);
  }

  @Test
  void anyOtherKeyPausesAndPainStops() {
    screen.press("2", "1");
    click(here());
    screen.press("Backspace").expectLine("What is it?").press("2");
    assertEquals(Optional.of(StopReason.of(StopSign.PAIN)), finished.get(0).stop());
    screen.expectWords("STOPPED. Pain has gone up");
  }

  @Test
  void aResizeOrAnotherWindowThrowsThePartAway() {
    screen.press("2", "1");
    click(here());
    screen.resize(60, 20).expectWords("This part is thrown away; nothing of it counts.");
    screen.press("1");
    click(here());
    screen.send("\u001b[O").expectWords("This part is thrown away; nothing of it counts.");
  }

  @Test
  void aWindowTooNarrowIsSaidAndNothingBegins() {
    screen.resize(30, 20).press("2").expectWords("this window is too narrow").press("1");
    screen.expectNoLine("=====");
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
  void everyStopSignEndsPointingAndIsKept(String keys, StopSign sign) {
    screen.press("2", "1", "Backspace");
    keys.codePoints().forEach(k -> screen.press(Character.toString(k)));
    assertEquals(Optional.of(StopReason.of(sign)), finished.get(0).stop());
    screen.expectWords("STOPPED. " + CoreStops.all().words(sign));
  }
}
