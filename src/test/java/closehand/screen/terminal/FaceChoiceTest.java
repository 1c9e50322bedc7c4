package closehand.screen.terminal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashMap;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** A3: when the line face is taken, and that it says why. */
class FaceChoiceTest {
  private boolean lineAsked;
  private boolean scripted;
  private boolean typed = true;
  private String system = "Linux";
  private final Map<String, String> environment = new HashMap<>(Map.of("TERM", "xterm-256color"));

  private FaceChoice choice() {
    return FaceChoice.of(
        new FaceChoice.Circumstances(lineAsked, scripted, typed, environment, system));
  }

  private void expectLine(String because) {
    FaceChoice choice = choice();
    assertEquals(false, choice.fullScreen());
    assertTrue(choice.why().contains(because), choice.why());
    assertTrue(choice.why().endsWith("."), choice.why());
  }

  private void expectFullScreen() {
    assertEquals(new FaceChoice(true, ""), choice());
  }

  @Test
  void aRealTerminalGetsTheFullScreen() {
    expectFullScreen();
    system = "Mac OS X";
    expectFullScreen();
  }

  @Test
  void whoAsksForLinesGetsLines() {
    lineAsked = true;
    expectLine("--line");
  }

  @Test
  void theVariableAsksForLinesUnlessItSaysNo() {
    for (String no : new String[] {"", "false", "FALSE", "0", "no", "No"}) {
      environment.put("CLOSEHAND_LINE", no);
      expectFullScreen();
    }
    for (String yes : new String[] {"1", "true", "yes", "on"}) {
      environment.put("CLOSEHAND_LINE", yes);
      expectLine("CLOSEHAND_LINE");
    }
  }

  @Test
  void pipesAndScriptsGetLines() {
    typed = false;
    expectLine("not a terminal");
    typed = true;
    scripted = true;
    expectLine("not a terminal");
  }

  @Test
  void terminalsThatCannotMoveTheCursorGetLines() {
    environment.put("TERM", "dumb");
    expectLine("plain lines");
    environment.put("TERM", "");
    expectLine("plain lines");
    environment.remove("TERM");
    expectLine("plain lines");
  }

  @Test
  void theWindowsConsoleGetsLines() {
    system = "Windows 11";
    expectLine("Windows");
  }

  @Test
  void coloursAreNeverSentWhereNoneAreWanted() {
    var contrast = java.util.Optional.of("contrast");
    assertEquals(Theme.CONTRAST, Theme.chosen(contrast, false, Map.of()).orElseThrow());
    assertEquals(Theme.PLAIN, Theme.chosen(contrast, true, Map.of()).orElseThrow());
    assertEquals(Theme.PLAIN, Theme.chosen(contrast, false, Map.of("NO_COLOR", "1")).orElseThrow());
    assertEquals(
        Theme.CONTRAST, Theme.chosen(contrast, false, Map.of("NO_COLOR", "")).orElseThrow());
    var none = java.util.Optional.<String>empty();
    assertEquals(Theme.PLAIN, Theme.chosen(none, false, Map.of()).orElseThrow());
    assertEquals(
        Theme.MONO, Theme.chosen(none, false, Map.of("CLOSEHAND_THEME", "mono")).orElseThrow());
    assertTrue(Theme.chosen(java.util.Optional.of("neon"), false, Map.of()).isEmpty());
  }
}
