package closehand.report;

import java.util.ArrayList;
import java.util.List;

/** Text in narrow columns, where a long word is cut with a hyphen. */
final class Wrapped {
  private Wrapped() {}

  /** The words in lines of at most this many columns; one empty line for no words. */
  static List<String> lines(int width, String text) {
    List<String> lines = new ArrayList<>();
    StringBuilder line = new StringBuilder();
    for (String word : text.strip().split(" +")) {
      String rest = word;
      if (!line.isEmpty() && count(line) + 1 + count(rest) > width) {
        lines.add(line.toString());
        line.setLength(0);
      }
      while (count(rest) > width) {
        int cut = rest.offsetByCodePoints(0, Math.max(1, width - 1));
        lines.add(rest.substring(0, cut) + (width > 1 ? "-" : ""));
        rest = rest.substring(cut);
      }
      line.append(line.isEmpty() ? "" : " ").append(rest);
    }
    lines.add(line.toString());
    return lines;
  }

  /** The text filled up with spaces. */
  static String padded(String text, int width) {
    return text + " ".repeat(Math.max(0, width - count(text)));
  }

  private static int count(CharSequence text) {
    return Character.codePointCount(text, 0, text.length());
  }
}
