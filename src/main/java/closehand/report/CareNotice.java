package closehand.report;

import closehand.rules.Warning;
import java.util.ArrayList;
import java.util.List;

/** A caution as it comes up during an interview: what it is, why, and what to do. */
public final class CareNotice {
  private static final int MOST_REASONS = 2;

  private CareNotice() {}

  /** The caution as text: its name once, its reason and what to do. */
  public static String of(Warning care, Glyphs glyphs) {
    String title = Phrases.bare(care.caution().title());
    String message = care.caution().message();
    boolean again = Phrases.bare(message).equalsIgnoreCase(title);
    List<Piece> pieces = new ArrayList<>();
    pieces.add(Paragraph.of("Take care: " + (again ? message : title + ". " + message)));
    List<String> reasons = Reasons.sentences(care.because(), MOST_REASONS);
    if (!reasons.isEmpty()) {
      pieces.add(Paragraph.of("Why you see this: " + String.join(" ", reasons)));
    }
    if (!care.caution().actions().isEmpty()) {
      pieces.add(Paragraph.of("What to do: " + String.join(" ", care.caution().actions())));
    }
    return Sheet.text(pieces, glyphs);
  }
}
