package closehand.report;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A paragraph that was laid out for a page of {@link Wrap#WIDTH} columns, put together again, so
 * that it can be laid out for a screen of any width.
 *
 * @param text on one line, with the spaces and the mark it begins with; empty for an empty line
 * @param hang spaces before its further lines
 */
public record Laid(String text, int hang) {
  /** A bullet or a number that begins a line of a list. */
  private static final Pattern LISTED = Pattern.compile("(\u2022|-|[0-9]+\\.) +");

  /** A bar of a table, which only stands in a row's first line. */
  private static final Pattern BAR = Pattern.compile("\\[[#-]{4,}\\]");

  /** The paragraphs of a page, in order; what was an empty line stays one. */
  public static List<Laid> of(List<String> lines) {
    List<Laid> paragraphs = new ArrayList<>();
    for (int i = 0; i < lines.size(); ) {
      StringBuilder paragraph = new StringBuilder(lines.get(i));
      int hang = hangOf(lines.get(i));
      int next = i + 1;
      while (next < lines.size() && goesOn(lines.get(next - 1), lines.get(next))) {
        hang = indent(lines.get(next));
        paragraph.append(' ').append(lines.get(next).strip());
        next++;
      }
      paragraphs.add(new Laid(paragraph.toString(), hang));
      i = next;
    }
    return paragraphs;
  }

  /** Its lines on a screen of this width; spaces before them take a quarter of it at most. */
  public List<String> lines(int width) {
    if (text.isBlank()) {
      return List.of("");
    }
    int most = width / 4;
    String first = " ".repeat(Math.min(indent(text), most));
    return Wrap.lines(width, first, " ".repeat(Math.min(hang, most)), text.stripLeading());
  }

  /** Whether a line was only begun because the one before was full. */
  private static boolean goesOn(String before, String line) {
    String text = line.stripLeading();
    int space = text.indexOf(' ');
    int word = space < 0 ? text.length() : space;
    boolean begins = text.isEmpty() || LISTED.matcher(text).lookingAt() || BAR.matcher(text).find();
    return !begins && !before.isBlank() && before.length() + 1 + word > Wrap.WIDTH;
  }

  /** Where further lines stand if a line must be broken: under its text, not under its bullet. */
  private static int hangOf(String line) {
    Matcher bullet = LISTED.matcher(line.stripLeading());
    return indent(line) + (bullet.lookingAt() ? bullet.end() : 0);
  }

  private static int indent(String line) {
    return line.length() - line.stripLeading().length();
  }
}
