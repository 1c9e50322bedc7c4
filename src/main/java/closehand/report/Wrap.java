package closehand.report;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToIntFunction;

/** Breaks a text into lines at spaces. */
public final class Wrap {
  /** Columns of every page; fits A4 paper in a type large enough to read. */
  public static final int WIDTH = 72;

  /** The narrowest room for text; less would only happen by a mistake in the calling code. */
  private static final int LEAST_ROOM = 8;

  private final int width;
  private final String hang;
  private final ToIntFunction<String> columns;
  private final List<String> lines = new ArrayList<>();
  private final StringBuilder line = new StringBuilder();
  private int column;
  private boolean lineHasWords;

  private Wrap(int width, String first, String hang, ToIntFunction<String> columns) {
    this.width = width;
    this.hang = hang;
    this.columns = columns;
    line.append(first);
    column = columns.applyAsInt(first);
  }

  /**
   * Lines of at most {@link #WIDTH} code points without trailing spaces.
   *
   * @param first stands before the text on the first line
   * @param hang stands before it on the others
   * @param text already clean; a word longer than a line is cut
   */
  public static List<String> lines(String first, String hang, String text) {
    return lines(WIDTH, first, hang, text);
  }

  /**
   * Lines of at most {@code width} code points without trailing spaces.
   *
   * @param width at least as wide as the longer beginning and a short word
   * @param first stands before the text on the first line
   * @param hang stands before it on the others
   * @param text already clean; a word longer than a line is cut
   */
  public static List<String> lines(int width, String first, String hang, String text) {
    return lines(width, first, hang, text, Wrap::count);
  }

  /**
   * The same where characters may take no column or several.
   *
   * @param columns how many columns a text takes; at most {@code width} for any one character
   */
  public static List<String> lines(
      int width, String first, String hang, String text, ToIntFunction<String> columns) {
    if (Math.max(columns.applyAsInt(first), columns.applyAsInt(hang)) > width - LEAST_ROOM) {
      throw new IllegalArgumentException("no room left for the text");
    }
    Wrap wrap = new Wrap(width, first, hang, columns);
    for (int from = 0; from < text.length(); ) {
      int to = text.indexOf(' ', from);
      int end = to < 0 ? text.length() : to;
      wrap.add(text.substring(from, end));
      from = end + 1;
    }
    return wrap.finished();
  }

  private void add(String word) {
    if (word.isEmpty()) {
      return;
    }
    int length = columns.applyAsInt(word);
    int gap = lineHasWords ? 1 : 0;
    if (lineHasWords && column + gap + length > width) {
      breakLine();
      gap = 0;
    }
    if (column + gap + length > width) {
      addInParts(word);
      return;
    }
    line.append(gap == 1 ? " " : "").append(word);
    column += gap + length;
    lineHasWords = true;
  }

  private void addInParts(String word) {
    int cut = fitting(word, width - column);
    line.append(word, 0, cut);
    breakLine();
    add(word.substring(cut));
  }

  /** How many characters of a word fit; one at least. */
  private int fitting(String word, int room) {
    int cut = word.offsetByCodePoints(0, 1);
    while (cut < word.length()) {
      int next = word.offsetByCodePoints(cut, 1);
      if (columns.applyAsInt(word.substring(0, next)) > room) {
        return cut;
      }
      cut = next;
    }
    return cut;
  }

  private void breakLine() {
    lines.add(line.toString().stripTrailing());
    line.setLength(0);
    line.append(hang);
    column = columns.applyAsInt(hang);
    lineHasWords = false;
  }

  private List<String> finished() {
    String last = line.toString().stripTrailing();
    if (lineHasWords || (lines.isEmpty() && !last.isEmpty())) {
      lines.add(last);
    }
    return lines;
  }

  private static int count(String text) {
    return text.codePointCount(0, text.length());
  }
}
