package closehand.report;

import java.util.List;

/** One part of a page that knows its own lines. */
interface Piece {
  /** Its lines, at most {@link Wrap#WIDTH} columns, without trailing spaces. */
  List<String> lines(Glyphs glyphs);
}
