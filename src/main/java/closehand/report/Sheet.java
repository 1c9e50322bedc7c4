package closehand.report;

import java.util.ArrayList;
import java.util.List;

/** A whole page of pieces. */
final class Sheet {
  private Sheet() {}

  /** The lines of all pieces; never two empty lines together, none at the start or the end. */
  static List<String> lines(List<? extends Piece> pieces, Glyphs glyphs) {
    List<String> lines = new ArrayList<>();
    boolean gap = false;
    for (Piece piece : pieces) {
      for (String line : piece.lines(glyphs)) {
        if (line.isEmpty()) {
          gap = !lines.isEmpty();
        } else {
          if (gap) {
            lines.add("");
          }
          lines.add(line);
          gap = false;
        }
      }
    }
    return lines;
  }

  /** The page as one text; every line ends with a line feed. */
  static String text(List<? extends Piece> pieces, Glyphs glyphs) {
    StringBuilder page = new StringBuilder();
    for (String line : lines(pieces, glyphs)) {
      page.append(line).append('\n');
    }
    return page.toString();
  }
}
