package closehand.report;

import java.util.List;

/**
 * What somebody said, in quotation marks, as an entry of a list.
 *
 * @param lead what stands before it
 * @param words their words
 */
record OwnWords(String lead, String words) implements Piece {
  @Override
  public List<String> lines(Glyphs glyphs) {
    return Paragraph.item(lead + " " + glyphs.quoted(words)).lines(glyphs);
  }
}
