package closehand.screen.terminal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import closehand.screen.frame.Showing;
import com.googlecode.lanterna.TerminalPosition;
import com.googlecode.lanterna.TerminalSize;
import com.googlecode.lanterna.screen.TerminalScreen;
import com.googlecode.lanterna.terminal.virtual.DefaultVirtualTerminal;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * Drives whatever is shown on a terminal that exists in memory only, so that a test reads like a
 * story: press, look, press.
 *
 * <p>Keys go through the real decoder and the real hold guard as the characters a terminal would
 * send. A second passes between two presses, on a clock of its own.
 */
public final class ScreenDriver {
  private static final Map<String, String> NAMED =
      Map.ofEntries(
          Map.entry("Enter", "\r"),
          Map.entry("Space", " "),
          Map.entry("Backspace", "\u007f"),
          Map.entry("Delete", "\u001b[3~"),
          Map.entry("Up", "\u001b[A"),
          Map.entry("Down", "\u001b[B"),
          Map.entry("Right", "\u001b[C"),
          Map.entry("Left", "\u001b[D"),
          Map.entry("Home", "\u001b[H"),
          Map.entry("End", "\u001b[F"),
          Map.entry("PageUp", "\u001b[5~"),
          Map.entry("PageDown", "\u001b[6~"),
          Map.entry("Tab", "\t"),
          Map.entry("F1", "\u001bOP"),
          Map.entry("Ctrl-C", "\u0003"),
          Map.entry("Ctrl-L", "\f"));

  private static final int SECOND = 1000;

  private final DefaultVirtualTerminal terminal;
  private final TerminalScreen screen;
  private final Stage stage;
  private final KeyDecoder decoder = new KeyDecoder();
  private long millis;

  private ScreenDriver(Showing showing, int columns, int rows, Theme theme) throws IOException {
    terminal = new DefaultVirtualTerminal(new TerminalSize(columns, rows));
    screen = new TerminalScreen(terminal);
    screen.startScreen();
    stage = new Stage(showing, screen, theme);
    stage.paint();
  }

  /** Opens the screen in the usual theme. */
  public static ScreenDriver open(Showing showing, int columns, int rows) {
    return open(showing, columns, rows, Theme.PLAIN);
  }

  /** Opens the screen in a theme. */
  public static ScreenDriver open(Showing showing, int columns, int rows, Theme theme) {
    try {
      return new ScreenDriver(showing, columns, rows, theme);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /**
   * Presses keys one after the other, a second apart: a single character, or a name such as {@code
   * Enter}, {@code Space}, {@code Down}, {@code Escape}, {@code Ctrl-C}.
   */
  public ScreenDriver press(String... keys) {
    for (String key : keys) {
      if (key.equals("Escape")) {
        send("\u001b");
        stage.take(decoder.silence(), millis);
        paint();
      } else {
        send(characters(key));
      }
    }
    return this;
  }

  private static String characters(String key) {
    if (key.codePointCount(0, key.length()) == 1) {
      return key;
    }
    String characters = NAMED.get(key);
    if (characters == null) {
      throw new IllegalArgumentException("no key is called " + key);
    }
    return characters;
  }

  /** Types a text, character by character. */
  public ScreenDriver type(String text) {
    text.codePoints().forEach(p -> send(Character.toString(p)));
    return this;
  }

  /** Holds a key down: it sends itself again after 660 milliseconds, then every 40. */
  public ScreenDriver hold(String key, int repeats) {
    press(key);
    millis += 660 - SECOND;
    for (int i = 0; i < repeats; i++) {
      send(characters(key));
      millis += 40 - SECOND;
    }
    millis += SECOND;
    return this;
  }

  /** Pastes a text from the clipboard. */
  public ScreenDriver paste(String text) {
    return send("\u001b[200~" + text + "\u001b[201~");
  }

  /** Sends characters as a terminal would, in one piece; a second passes. */
  public ScreenDriver send(String characters) {
    millis += SECOND;
    stage.take(decoder.feed(characters), millis);
    paint();
    return this;
  }

  /** Lets time pass; what is due by itself happens when it is due. */
  public ScreenDriver pass(long millisToPass) {
    long until = millis + millisToPass;
    for (long due = due(); due >= 0 && millis + due <= until; due = due()) {
      millis += due;
      stage.passed(millis);
      paint();
    }
    millis = until;
    return this;
  }

  /** Lets time pass until something has happened by itself, if anything is due. */
  public ScreenDriver passUntilDue() {
    return due() < 0 ? this : pass(due());
  }

  private long due() {
    return stage.over() ? -1 : stage.waitMillis(millis);
  }

  /** Lets so much time pass and then sends characters in one piece. */
  public ScreenDriver after(long millisBefore, String characters) {
    pass(millisBefore);
    stage.take(decoder.feed(characters), millis);
    paint();
    return this;
  }

  /** Gives the window another size. */
  public ScreenDriver resize(int columns, int rows) {
    terminal.setTerminalSize(new TerminalSize(columns, rows));
    stage.fit();
    paint();
    return this;
  }

  private void paint() {
    try {
      stage.paint();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The rows on the screen, without the blanks at their ends. */
  public List<String> lines() {
    List<String> lines = new ArrayList<>();
    TerminalSize size = terminal.getTerminalSize();
    for (int row = 0; row < size.getRows(); row++) {
      StringBuilder line = new StringBuilder();
      for (int column = 0; column < size.getColumns(); column++) {
        var cell = terminal.getCharacter(column, row);
        line.append(cell.getCharacterString());
        column += cell.isDoubleWidth() ? 1 : 0;
      }
      lines.add(line.toString().stripTrailing());
    }
    return lines;
  }

  /** All words on the screen in reading order, a blank between them. */
  public String words() {
    return String.join(" ", lines()).replaceAll("\\s+", " ").strip();
  }

  /** Some row must hold this text. */
  public ScreenDriver expectLine(String text) {
    assertTrue(lines().stream().anyMatch(l -> l.contains(text)), () -> wanted(text));
    return this;
  }

  /** No row may hold this text. */
  public ScreenDriver expectNoLine(String text) {
    assertTrue(
        lines().stream().noneMatch(l -> l.contains(text)), () -> "not wanted: " + wanted(text));
    return this;
  }

  /** These words must stand on the screen, wherever the lines break. */
  public ScreenDriver expectWords(String text) {
    assertTrue(words().contains(text), () -> wanted(text));
    return this;
  }

  /** The terminal's own cursor must stand visibly on a row with this text. */
  public ScreenDriver expectCursorOn(String text) {
    assertTrue(terminal.isCursorVisible(), "the cursor is hidden");
    String row = lines().get(cursor().getRow());
    assertTrue(row.contains(text), () -> "the cursor stands on: " + row + "\n" + wanted(text));
    return this;
  }

  /** Whether the screen has closed must be as said. */
  public ScreenDriver expectOver(boolean over) {
    assertEquals(over, stage.over(), () -> "whether it is over\n" + wanted(""));
    return this;
  }

  /** Where the terminal's own cursor stands. */
  public TerminalPosition cursor() {
    return terminal.getCursorPosition();
  }

  private String wanted(String text) {
    return "\"" + text + "\" on this screen:\n" + String.join("\n", lines());
  }
}
