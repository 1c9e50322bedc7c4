package closehand.report;

import java.util.List;

/** An empty line. */
record Gap() implements Piece {
  @Override
  public List<String> lines(Glyphs glyphs) {
    return List.of("");
  }
}
