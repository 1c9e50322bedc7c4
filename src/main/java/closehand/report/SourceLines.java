package closehand.report;

import closehand.bank.Source;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/** What the page rests on, and how far that was checked. */
final class SourceLines {
  private SourceLines() {}

  /** The standing of the content, then every source used. */
  static List<Piece> of(PageInput input) {
    return of(input, BasisWords.used(input));
  }

  /** The same for some sources alone. */
  static List<Piece> of(PageInput input, Set<String> used) {
    List<Piece> pieces = new ArrayList<>();
    pieces.add(new Heading("What this rests on"));
    pieces.add(
        Paragraph.of(
            "The content is rules of thumb. No published method used here was made for disabled"
                + " players, and no rule has been tested with them. A licensed clinician reviews"
                + " the page before use. It suggests; it finds no cause and gives no score of a"
                + " person."));
    for (Source source : input.bank().sources()) {
      if (used.contains(source.id())) {
        pieces.add(Paragraph.item(words(source)));
      }
    }
    List<String> other =
        used.stream().filter(u -> input.bank().source(u).isEmpty()).sorted().toList();
    if (!other.isEmpty()) {
      pieces.add(Paragraph.item("Without a published source: " + String.join(", ", other) + "."));
    }
    return pieces;
  }

  /** A published source with its status; what is none, with what it is used for. */
  private static String words(Source source) {
    return source.reference().isBlank()
        ? source.id() + ": " + Phrases.sentence(source.usedFor())
        : source.id()
            + ": "
            + Phrases.sentence(source.reference())
            + " Status: "
            + Phrases.sentence(source.status());
  }
}
