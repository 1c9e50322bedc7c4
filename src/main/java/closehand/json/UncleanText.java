package closehand.json;

import closehand.interview.PlainText;
import java.util.Locale;

/**
 * Finds characters that must not reach a screen: controls, direction marks, invisible and private
 * ones.
 */
final class UncleanText {
  private UncleanText() {}

  /**
   * The index of the first character that must not pass, or -1. Line ends and tabs pass: they
   * become spaces.
   */
  static int firstUnclean(String text) {
    for (int i = 0; i < text.length(); ) {
      int c = text.codePointAt(i);
      if (isUnclean(c)) {
        return i;
      }
      i += Character.charCount(c);
    }
    return -1;
  }

  /** The text with tabs and line ends as single spaces; most often the same object. */
  static String oneLine(String text) {
    for (int i = 0; i < text.length(); i++) {
      if (text.charAt(i) < ' ') {
        return text.replace("\r\n", " ").replace('\n', ' ').replace('\r', ' ').replace('\t', ' ');
      }
    }
    return text;
  }

  /** The text with every unclean character replaced by the replacement character. */
  static String replaced(String text) {
    StringBuilder out = new StringBuilder(text.length());
    for (int i = 0; i < text.length(); ) {
      int point = text.codePointAt(i);
      out.appendCodePoint(isUnclean(point) ? 0xFFFD : point);
      i += Character.charCount(point);
    }
    return oneLine(out.toString());
  }

  /** What kind of character it is, in words, without showing it. */
  static String describe(int c) {
    String number = String.format(Locale.ROOT, "U+%04X", c);
    return switch (Character.getType(c)) {
      case Character.CONTROL -> "a control character (" + number + ")";
      case Character.FORMAT -> "an invisible or direction mark (" + number + ")";
      case Character.SURROGATE -> "half a character (" + number + ")";
      case Character.LINE_SEPARATOR, Character.PARAGRAPH_SEPARATOR ->
          "a hidden line end (" + number + ")";
      default -> "a character without a meaning of its own (" + number + ")";
    };
  }

  /** Whatever cannot be kept as it is, apart from line ends and tabs. */
  private static boolean isUnclean(int c) {
    return !PlainText.isPlain(c) && c != '\n' && c != '\r' && c != '\t';
  }
}
