package closehand.screen.terminal;

import closehand.screen.frame.Cell;
import closehand.screen.frame.CellText;
import closehand.screen.frame.Frame;
import closehand.screen.frame.Role;
import com.googlecode.lanterna.SGR;
import com.googlecode.lanterna.TerminalPosition;
import com.googlecode.lanterna.TextCharacter;
import com.googlecode.lanterna.TextColor;
import com.googlecode.lanterna.screen.Screen;
import java.io.IOException;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.Map;

/**
 * Puts frames on a screen; only the cells that differ are sent.
 *
 * <p>The terminal's own cursor is always shown where the frame wants it.
 */
final class Painter {
  private final Screen screen;
  private final Theme theme;
  private final Map<Role, Map<String, TextCharacter>> made = new EnumMap<>(Role.class);

  Painter(Screen screen, Theme theme) {
    this.screen = screen;
    this.theme = theme;
  }

  /**
   * Paints a frame.
   *
   * @param afresh whether to send every cell, as after a change of size
   */
  void paint(Frame frame, boolean afresh) throws IOException {
    for (int row = 0; row < frame.size().rows(); row++) {
      paintRow(frame, row);
    }
    screen.setCursorPosition(new TerminalPosition(frame.cursor().column(), frame.cursor().row()));
    screen.refresh(afresh ? Screen.RefreshType.COMPLETE : Screen.RefreshType.DELTA);
  }

  private void paintRow(Frame frame, int row) {
    int columns = frame.size().columns();
    for (int column = 0; column < columns; column++) {
      Cell cell = frame.cell(row, column);
      screen.setCharacter(column, row, character(cell.text(), cell.role()));
      boolean wide = column + 1 < columns && frame.cell(row, column + 1).text().isEmpty();
      if (wide) {
        column++;
        if (!screen.getBackCharacter(column - 1, row).isDoubleWidth()) {
          screen.setCharacter(column, row, character(" ", cell.role()));
        }
      }
    }
  }

  private TextCharacter character(String text, Role role) {
    return made.computeIfAbsent(role, r -> new HashMap<>())
        .computeIfAbsent(text, t -> make(t, theme.look(role)));
  }

  private static TextCharacter make(String text, Look look) {
    EnumSet<SGR> marks = EnumSet.noneOf(SGR.class);
    if (look.bold()) {
      marks.add(SGR.BOLD);
    }
    if (look.reverse()) {
      marks.add(SGR.REVERSE);
    }
    if (look.underline()) {
      marks.add(SGR.UNDERLINE);
    }
    TextColor foreground =
        look.colours().<TextColor>map(c -> indexed(c.foreground())).orElse(TextColor.ANSI.DEFAULT);
    TextColor background =
        look.colours().<TextColor>map(c -> indexed(c.background())).orElse(TextColor.ANSI.DEFAULT);
    return TextCharacter.fromString(agreed(text), foreground, background, marks)[0];
  }

  private static TextColor indexed(int colour) {
    return new TextColor.Indexed(colour);
  }

  /** A question mark where the library counts the cells of a character in another way than we. */
  private static String agreed(String text) {
    if (text.isEmpty() || text.codePointAt(0) > Character.MAX_VALUE) {
      return "?";
    }
    TextCharacter[] theirs = TextCharacter.fromString(text);
    boolean same = theirs.length == 1 && theirs[0].isDoubleWidth() == (CellText.width(text) == 2);
    return same ? text : "?";
  }
}
