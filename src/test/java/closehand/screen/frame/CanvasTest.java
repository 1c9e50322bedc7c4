package closehand.screen.frame;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;

import closehand.report.Glyphs;
import java.util.List;
import org.junit.jupiter.api.Test;

class CanvasTest {
  private static final ScreenSize SMALL = new ScreenSize(8, 2);

  @Test
  void textStandsWhereItWasPutWithItsRole() {
    Canvas canvas = new Canvas(SMALL, Glyphs.UNICODE);
    canvas.put(0, 0, "> ", Role.MARK);
    canvas.put(0, 2, "Left", Role.CHOSEN);
    canvas.cursor(0, 0);
    Frame frame = canvas.frame();
    assertEquals(List.of("> Left", ""), frame.text());
    assertEquals(List.of("MMCCCC", ""), frame.roles());
  }

  @Test
  void whatDoesNotFitIsCutOffAndTheCursorStaysOnTheScreen() {
    Canvas canvas = new Canvas(SMALL, Glyphs.UNICODE);
    assertEquals(13, canvas.put(1, 5, "fingers.", Role.PLAIN));
    canvas.put(-1, 0, "above", Role.PLAIN);
    canvas.put(0, -2, "ab left", Role.PLAIN);
    canvas.put(7, 0, "below", Role.PLAIN);
    canvas.cursor(7, 70);
    assertEquals(List.of(" left", "     fin"), canvas.frame().text());
    assertEquals(new Cursor(1, 7), canvas.frame().cursor());
  }

  @Test
  void aWideCharacterTakesTwoCellsAndIsNeverCutInHalf() {
    Canvas canvas = new Canvas(SMALL, Glyphs.UNICODE);
    canvas.put(0, 0, "\u624b\u624b\u624b\u624bx", Role.PLAIN);
    canvas.put(1, 7, "\u624b", Role.PLAIN);
    assertEquals(List.of("\u624b\u624b\u624b\u624b", ""), canvas.frame().text());
    canvas.put(0, 1, "a", Role.PLAIN);
    canvas.put(0, 4, "b", Role.PLAIN);
    assertEquals(" a\u624bb \u624b", canvas.frame().text().get(0));
  }

  @Test
  void marksStayOnTheirLetter() {
    Canvas canvas = new Canvas(SMALL, Glyphs.UNICODE);
    canvas.put(0, 0, "x\u0301\u0302y", Role.PLAIN);
    assertEquals("x\u0301\u0302", canvas.frame().cell(0, 0).text());
    assertEquals("y", canvas.frame().cell(0, 1).text());
  }

  @Test
  void nothingThatSteersATerminalReachesAFrame() {
    Canvas canvas = new Canvas(new ScreenSize(20, 1), Glyphs.ASCII);
    canvas.put(0, 0, "\u001b[31mred\u0007 \u2019tis", Role.PLAIN);
    String row = canvas.frame().text().get(0);
    assertFalse(row.chars().anyMatch(c -> c < ' ' || c > '~'), row);
  }

  @Test
  void aFrameThatDoesNotFillItsSizeIsACallersBug() {
    Cursor cursor = new Cursor(0, 0);
    assertThrows(
        IllegalArgumentException.class, () -> new Frame(SMALL, List.of(List.of()), cursor));
    assertThrows(
        IllegalArgumentException.class,
        () -> new Frame(SMALL, new Canvas(SMALL, Glyphs.ASCII).frame().rows(), new Cursor(2, 0)));
  }
}
