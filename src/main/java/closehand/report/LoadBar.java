package closehand.report;

import closehand.bank.Effectors;
import closehand.strain.EffectorReading;
import closehand.strain.LoadWords;
import java.util.ArrayList;
import java.util.List;

/**
 * One body part: its name, a bar up to its red line or the upper line of its strain index,
 * whichever is nearer, its number and its words. The bar says nothing that number and words do not
 * say.
 *
 * @param part what it does
 */
record LoadBar(EffectorReading part) implements Piece {
  private static final int NAME_COLUMNS = 20;
  private static final int CELLS = 10;

  @Override
  public List<String> lines(Glyphs glyphs) {
    String name = Phrases.upper(Effectors.words(part.effector()));
    String start = name + " ".repeat(Math.max(1, NAME_COLUMNS - name.length())) + bar() + " ";
    return new ArrayList<>(
        Wrap.lines(start, " ".repeat(NAME_COLUMNS + CELLS + 3), Clean.of(words(), glyphs)));
  }

  /** "44 a minute, held 12 % of play; amber: busy, worth sharing". */
  private String words() {
    return LoadWords.often(part.presses().perMinute())
        + ", held "
        + Math.round(100 * part.presses().heldShare())
        + " %; "
        + LoadWords.light(part);
  }

  /** Filled up to the share of the nearer upper line; a full bar is at the line or above. */
  private String bar() {
    double share = Math.min(1, part.heaviness());
    int filled = (int) Math.ceil(share * CELLS - 1e-9);
    return "[" + "#".repeat(filled) + "-".repeat(CELLS - filled) + "]";
  }
}
