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
import java.util.Optional;

/**
 * Puts frames on a screen; only the cells that differ are sent.
 *
 * <p>The terminal's own cursor is always shown where the frame wants it.
 */
final class Painter {
  /** The first wide character (Unicode Standard Annex 11, EastAsianWidth: Hangul Jamo). */
  private static final char FIRST_WIDE = 0x1100;

  /** Punctuation, arrows, lines, blocks and geometric shapes: not wide (the same annex). */
  private static final char FIRST_SIGN = 0x2010;

  private static final char LAST_SIGN = 0x25FF;

  private final Screen screen;
  private final Theme theme;
  private final Map<Role, Map<String, TextCharacter>> made = new EnumMap<>(Role.class);
  private Optional<Frame> painted = Optional.empty();
  private Optional<TextCharacter> blank = Optional.empty();

  Painter(Screen screen, Theme theme) {
    this.screen = screen;
    this.theme = theme;
  }

  /** Makes a first character, which loads what all others are checked with. */
  static void prepare() {
    make(Cell.BLANK.text(), Look.NONE);
  }

  /**
   * Paints a frame.
   *
   * @param afresh whether to send every cell, as after a change of size
   */
  void paint(Frame frame, boolean afresh) throws IOException {
    Optional<Frame> before = afresh ? Optional.empty() : painted;
    for (int row = 0; row < frame.size().rows(); row++) {
      if (before.isEmpty() || !sameRow(frame, before.get(), row)) {
        paintRow(frame, row);
      }
    }
    painted = Optional.of(frame);
    screen.setCursorPosition(new TerminalPosition(frame.cursor().column(), frame.cursor().row()));
    screen.refresh(afresh ? Screen.RefreshType.COMPLETE : Screen.RefreshType.DELTA);
  }

  private static boolean sameRow(Frame frame, Frame before, int row) {
    boolean same = frame.size().equals(before.size());
    for (int column = 0; same && column < frame.size().columns(); column++) {
      same = frame.cell(row, column).looksLike(before.cell(row, column));
    }
    return same;
  }

  private void paintRow(Frame frame, int row) {
    int columns = frame.size().columns();
    for (int column = 0; column < columns; column++) {
      Cell cell = frame.cell(row, column);
      screen.setCharacter(column, row, character(cell));
      boolean wide = column + 1 < columns && frame.cell(row, column + 1).text().isEmpty();
      if (wide) {
        column++;
        if (!screen.getBackCharacter(column - 1, row).isDoubleWidth()) {
          screen.setCharacter(column, row, character(new Cell(" ", cell.role())));
        }
      }
    }
  }

  /** Most cells are the blank one; it is not looked up again and again. */
  private TextCharacter character(Cell cell) {
    if (cell != Cell.BLANK) {
      return character(cell.text(), cell.role());
    }
    if (blank.isEmpty()) {
      blank = Optional.of(character(cell.text(), cell.role()));
    }
    return blank.get();
  }

  private TextCharacter character(String text, Role role) {
    return made.computeIfAbsent(role, r -> new HashMap<>())
        .computeIfAbsent(text, t -> make(t, theme.look(role)));
  }

  @SuppressWarnings("deprecation") // the library's other ways look up how wide each character is
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
    if (isPlainlyNarrow(text)) {
      return new Fixed(new TextCharacter(text.charAt(0), foreground, background, marks), false);
    }
    String shown = agreed(text);
    return new Fixed(
        TextCharacter.fromString(shown, foreground, background, marks)[0],
        CellText.width(shown) == 2);
  }

  /** One character that takes one cell for everybody, and needs no looking up. */
  private static boolean isPlainlyNarrow(String text) {
    if (text.length() != 1 || text.charAt(0) < ' ') {
      return false;
    }
    char one = text.charAt(0);
    return one < FIRST_WIDE || (one >= FIRST_SIGN && one <= LAST_SIGN);
  }

  /** A character that knows how wide it is; the library looks each one up in tables every time. */
  static final class Fixed extends TextCharacter {
    private static final long serialVersionUID = 1L;
    private final boolean wide;

    @SuppressWarnings("deprecation") // the only way to make one's own
    Fixed(TextCharacter character, boolean wide) {
      super(character);
      this.wide = wide;
    }

    @Override
    public boolean isDoubleWidth() {
      return wide;
    }

    @Override
    public boolean equals(Object other) {
      return super.equals(other);
    }

    @Override
    public int hashCode() {
      return super.hashCode();
    }
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
