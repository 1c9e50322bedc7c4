package closehand.screen;

import closehand.report.Wrap;
import closehand.screen.frame.Role;
import closehand.screen.view.Block;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Text that was laid out for a page, put together to paragraphs again, so that it can be laid out
 * for a screen of any width.
 */
final class Paragraphs {
  /** A bullet or a number that begins a line of a list. */
  private static final Pattern LISTED = Pattern.compile("(\u2022|-|[0-9]+\\.) +");

  /** A bar of a table, which only stands in a row's first line. */
  private static final Pattern BAR = Pattern.compile("\\[[#-]{4,}\\]");

  private Paragraphs() {}

  /** The paragraphs; what was an empty line stays one. */
  static List<Block> of(List<String> lines) {
    List<Block> blocks = new ArrayList<>();
    for (int i = 0; i < lines.size(); ) {
      StringBuilder paragraph = new StringBuilder(lines.get(i));
      int hang = hang(lines.get(i));
      int next = i + 1;
      while (next < lines.size() && goesOn(lines.get(next - 1), lines.get(next))) {
        hang = indent(lines.get(next));
        paragraph.append(' ').append(lines.get(next).strip());
        next++;
      }
      blocks.add(new Block.Laid(paragraph.toString(), hang, role(lines.get(i))));
      i = next;
    }
    return blocks;
  }

  /** Whether a line was only begun because the one before was full. */
  private static boolean goesOn(String before, String line) {
    String text = line.stripLeading();
    int space = text.indexOf(' ');
    int word = space < 0 ? text.length() : space;
    boolean begins = text.isEmpty() || LISTED.matcher(text).lookingAt() || BAR.matcher(text).find();
    return !begins && !before.isBlank() && before.length() + 1 + word > Wrap.WIDTH;
  }

  /** Where further lines stand if the line must be broken: under the text, not under its bullet. */
  private static int hang(String line) {
    Matcher bullet = LISTED.matcher(line.stripLeading());
    return indent(line) + (bullet.lookingAt() ? bullet.end() : 0);
  }

  private static int indent(String line) {
    return line.length() - line.stripLeading().length();
  }

  private static Role role(String line) {
    String bare = line.strip().toUpperCase(java.util.Locale.ROOT);
    boolean warns = bare.startsWith("STOP.") || bare.startsWith("TAKE CARE");
    boolean heading =
        !bare.isEmpty() && bare.equals(line.strip()) && bare.chars().anyMatch(Character::isLetter);
    return warns ? Role.WARNING : heading ? Role.STRONG : Role.PLAIN;
  }
}
