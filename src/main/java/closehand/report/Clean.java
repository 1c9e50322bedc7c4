package closehand.report;

import java.text.Normalizer;

/**
 * Makes any text fit to print: no character that steers a terminal, hides, or turns the reading
 * direction around.
 *
 * <p>The categories are those of the Unicode Standard, chapter 4.
 */
public final class Clean {
  /** How many combining marks and joiners one letter may carry; more would run over other lines. */
  static final int MOST_MARKS = 4;

  private static final int REPLACEMENT = 0xFFFD;
  private static final int ZERO_WIDTH_NON_JOINER = 0x200C;
  private static final int ZERO_WIDTH_JOINER = 0x200D;

  private Clean() {}

  /**
   * The text in composed form, ready to print on one line. Tabs and line ends become spaces, what
   * may not be printed becomes a replacement character ("?" in ASCII).
   */
  public static String of(String text, Glyphs glyphs) {
    if (isPlain(text)) {
      return text;
    }
    String composed = Normalizer.normalize(text, Normalizer.Form.NFC);
    StringBuilder clean = new StringBuilder(composed.length());
    int marks = 0;
    for (int i = 0; i < composed.length(); ) {
      int point = composed.codePointAt(i);
      i += Character.charCount(point);
      marks = isMark(point) ? marks + 1 : 0;
      if (marks <= MOST_MARKS) {
        append(clean, printable(point), glyphs);
      }
    }
    return clean.toString();
  }

  private static boolean isPlain(String text) {
    for (int i = 0; i < text.length(); i++) {
      if (text.charAt(i) < ' ' || text.charAt(i) > '~') {
        return false;
      }
    }
    return true;
  }

  private static void append(StringBuilder clean, int point, Glyphs glyphs) {
    if (glyphs == Glyphs.ASCII && point > '~') {
      clean.append(isMark(point) ? "" : Ascii.of(point));
    } else {
      clean.appendCodePoint(point);
    }
  }

  private static boolean isMark(int point) {
    return isJoiner(point)
        || switch (Character.getType(point)) {
          case Character.NON_SPACING_MARK,
              Character.ENCLOSING_MARK,
              Character.COMBINING_SPACING_MARK ->
              true;
          default -> false;
        };
  }

  private static boolean isJoiner(int point) {
    return point == ZERO_WIDTH_JOINER || point == ZERO_WIDTH_NON_JOINER;
  }

  private static int printable(int point) {
    if (point == '\t' || point == '\n' || point == '\r') {
      return ' ';
    }
    if (isJoiner(point)) {
      return point;
    }
    return switch (Character.getType(point)) {
      case Character.SPACE_SEPARATOR -> ' ';
      case Character.CONTROL,
          Character.FORMAT,
          Character.SURROGATE,
          Character.PRIVATE_USE,
          Character.LINE_SEPARATOR,
          Character.PARAGRAPH_SEPARATOR ->
          REPLACEMENT;
      default -> isNoncharacter(point) ? REPLACEMENT : point;
    };
  }

  /** The 66 code points that never stand for a character (Unicode Standard, section 23.7). */
  private static boolean isNoncharacter(int point) {
    return (point & 0xFFFE) == 0xFFFE || (point >= 0xFDD0 && point <= 0xFDEF);
  }
}
