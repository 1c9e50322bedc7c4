package closehand.screen.terminal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import closehand.report.Glyphs;
import closehand.screen.frame.Canvas;
import closehand.screen.frame.Frame;
import closehand.screen.frame.Role;
import closehand.screen.frame.ScreenSize;
import closehand.screen.frame.Showing;
import com.googlecode.lanterna.screen.TerminalScreen;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** What is sent to the terminal, byte by byte. */
class TerminalDeviceTest {
  private static final ScreenSize SIZE = new ScreenSize(40, 10);
  private static final Pattern LOOKS = Pattern.compile("\u001b\\[([0-9;]*)m");

  private final ByteArrayOutputStream sent = new ByteArrayOutputStream();

  private static Frame frame(String text, int row) {
    Canvas canvas = new Canvas(SIZE, Glyphs.UNICODE);
    for (Role role : Role.values()) {
      canvas.put(role.ordinal(), 0, text + " " + role, role);
    }
    canvas.cursor(row, 2);
    return canvas.frame();
  }

  /** Opens, paints two different frames and gives the screen back. */
  private String painted(Theme theme, Charset charset, String first, String second)
      throws IOException {
    TerminalDevice device = new TerminalDevice(sent, charset, SIZE);
    TerminalScreen screen = new TerminalScreen(device);
    screen.startScreen();
    Painter painter = new Painter(screen, theme);
    painter.paint(frame(first, 3), true);
    painter.paint(frame(second, 5), false);
    device.exitPrivateMode();
    return sent.toString(charset);
  }

  @Test
  void reportsOfTheMouseAreAskedForOnceAndTakenBackWithTheScreen() throws IOException {
    TerminalDevice device = new TerminalDevice(sent, StandardCharsets.UTF_8, SIZE);
    TerminalScreen screen = new TerminalScreen(device);
    screen.startScreen();
    assertFalse(sent.toString(StandardCharsets.UTF_8).contains("[?1003"));
    device.report(Set.of(Showing.Report.POINTER, Showing.Report.FOCUS));
    device.report(Set.of(Showing.Report.POINTER, Showing.Report.FOCUS));
    device.report(Set.of(Showing.Report.POINTER));
    String asked = sent.toString(StandardCharsets.UTF_8);
    assertEquals(asked.indexOf("\u001b[?1003h"), asked.lastIndexOf("\u001b[?1003h"));
    assertTrue(asked.contains("\u001b[?1006h") && asked.endsWith("\u001b[?1004l"));
    device.exitPrivateMode();
    String all = sent.toString(StandardCharsets.UTF_8);
    assertTrue(all.lastIndexOf("\u001b[?1003l") > all.lastIndexOf("\u001b[?1003h"));
    assertTrue(all.contains("\u001b[?1006l"));
  }

  @Test
  void theUsualThemeSendsNoColourCodeAtAll() throws IOException {
    for (Theme theme : new Theme[] {Theme.PLAIN, Theme.MONO}) {
      sent.reset();
      Matcher looks = LOOKS.matcher(painted(theme, StandardCharsets.UTF_8, "one", "two"));
      int found = 0;
      while (looks.find()) {
        for (String code : looks.group(1).split(";")) {
          int number = code.isEmpty() ? 0 : Integer.parseInt(code);
          boolean colour = (number >= 30 && number <= 49) || (number >= 90 && number <= 107);
          assertFalse(colour, theme + " sent " + looks.group(1));
          assertTrue(number != 2 && number != 5, "dim or blinking");
        }
        found++;
      }
      assertTrue(found > 0);
    }
  }

  @Test
  void theContrastThemeSendsColoursInPairs() throws IOException {
    String all = painted(Theme.CONTRAST, StandardCharsets.UTF_8, "one", "two");
    assertTrue(all.contains("\u001b[38;5;") && all.contains("\u001b[48;5;"));
    assertFalse(all.contains("\u001b[39m") || all.contains("\u001b[49m"));
  }

  @Test
  void thePlaceOfTheCursorIsTheLastThingSentOfAFrame() throws IOException {
    String all = painted(Theme.PLAIN, StandardCharsets.UTF_8, "one", "two");
    assertTrue(all.contains("\u001b[?25h\u001b[4;3H"), all.replace('\u001b', '^'));
    assertTrue(all.contains("\u001b[?25h\u001b[6;3H"), all.replace('\u001b', '^'));
    assertFalse(all.contains("\u001b[?25l"), "the cursor was hidden");
  }

  @Test
  void theSecondFrameSendsOnlyWhatChanged() throws IOException {
    String all = painted(Theme.PLAIN, StandardCharsets.UTF_8, "abcdef", "abcxef");
    String second = all.substring(all.indexOf("\u001b[4;3H"));
    assertFalse(second.contains("ab"), second.replace('\u001b', '^'));
    assertTrue(second.contains("x"));
    assertEquals(
        1,
        all.split("\u001b\\[2J", -1).length - 2,
        "cleared once at the start, once for the first frame");
  }

  @Test
  void theTerminalIsNeverAskedAnything() throws IOException {
    String all = painted(Theme.PLAIN, StandardCharsets.UTF_8, "one", "two");
    for (String question :
        new String[] {"\u001b[6n", "\u001b[c", "\u001b[>c", "\u0005", "\u001b[?u"}) {
      assertFalse(all.contains(question));
    }
  }

  @Test
  void whatIsSwitchedOnIsSwitchedOff() throws IOException {
    String all = painted(Theme.PLAIN, StandardCharsets.UTF_8, "one", "two");
    for (String mode : new String[] {"?1049", "?2004"}) {
      int on = all.indexOf("\u001b[" + mode + "h");
      int off = all.indexOf("\u001b[" + mode + "l");
      assertTrue(on >= 0 && off > on, mode);
    }
    assertTrue(all.lastIndexOf("\u001b[0m") > all.lastIndexOf("\u001b[7m"));
  }

  @Test
  void charactersAreWrittenAsTheTerminalReadsThem() throws IOException {
    painted(Theme.PLAIN, StandardCharsets.UTF_8, "\u00e9\u2019", "\u624b x");
    String utf8 = sent.toString(StandardCharsets.UTF_8);
    assertTrue(utf8.contains("\u00e9\u2019") && utf8.contains("\u624b"));
    assertFalse(utf8.indexOf('\u0000') >= 0, "a zero byte was sent");
    sent.reset();
    painted(Theme.PLAIN, StandardCharsets.ISO_8859_1, "\u00e9", "x");
    assertTrue(sent.toString(StandardCharsets.ISO_8859_1).contains("\u00e9"));
  }
}
