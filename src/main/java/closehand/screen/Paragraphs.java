package closehand.screen;

import closehand.report.Laid;
import closehand.screen.frame.Role;
import closehand.screen.view.Block;
import java.util.ArrayList;
import java.util.List;

/**
 * Text that was laid out for a page, put together to paragraphs again, so that it can be laid out
 * for a screen of any width.
 */
final class Paragraphs {
  private Paragraphs() {}

  /** The paragraphs; what was an empty line stays one. */
  static List<Block> of(List<String> lines) {
    List<Block> blocks = new ArrayList<>();
    for (Laid paragraph : Laid.of(lines)) {
      blocks.add(new Block.Laid(paragraph.text(), paragraph.hang(), role(paragraph.text())));
    }
    return blocks;
  }

  private static Role role(String line) {
    String bare = line.strip().toUpperCase(java.util.Locale.ROOT);
    boolean warns = bare.startsWith("STOP.") || bare.startsWith("TAKE CARE");
    boolean heading =
        !bare.isEmpty() && bare.equals(line.strip()) && bare.chars().anyMatch(Character::isLetter);
    return warns ? Role.WARNING : heading ? Role.STRONG : Role.PLAIN;
  }
}
