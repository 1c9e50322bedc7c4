package closehand.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * The line above a part of a page, in capitals, with an empty line before it.
 *
 * @param text a few words
 */
record Heading(String text) implements Piece {
  @Override
  public List<String> lines(Glyphs glyphs) {
    List<String> lines = new ArrayList<>();
    lines.add("");
    lines.addAll(Wrap.lines("", "", Clean.of(text, glyphs).toUpperCase(Locale.ROOT)));
    return lines;
  }
}
