package closehand.report;

import closehand.measure.norms.Comparison;
import closehand.measure.norms.NormWords;
import closehand.measure.norms.ThumbReach;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/** Measured strength beside what is usual, and how far a thumb may reach. */
public final class NormText {
  private NormText() {}

  /**
   * The page.
   *
   * @param comparisons of one measurement or several
   * @param handCentimetres length of the hand, where measured
   */
  public static String of(
      List<Comparison> comparisons,
      ThumbReach thumb,
      OptionalDouble handCentimetres,
      Glyphs glyphs) {
    List<Piece> pieces = new ArrayList<>();
    if (!comparisons.isEmpty()) {
      pieces.add(new Heading("Beside what is usual"));
    }
    for (Comparison comparison : comparisons) {
      pieces.add(Paragraph.item(NormWords.sentence(comparison)));
      if (comparison instanceof Comparison.Beside beside) {
        pieces.add(Paragraph.indented(2, NormWords.figures(beside)));
      }
    }
    if (!comparisons.isEmpty()) {
      pieces.add(Paragraph.of(NormWords.CONTEXT));
    }
    if (handCentimetres.isPresent()) {
      pieces.add(new Heading("How far the thumb may reach"));
      NormWords.reach(thumb, handCentimetres.getAsDouble())
          .forEach(s -> pieces.add(Paragraph.item(s)));
      pieces.add(Paragraph.of("Source: " + thumb.source() + " (" + thumb.status() + ")."));
    }
    return Sheet.text(pieces, glyphs);
  }
}
