package closehand.report;

import closehand.bank.Approach;
import closehand.rules.Standing;
import java.util.ArrayList;
import java.util.List;

/** What to try, best first, on the player's page. */
final class TryLines {
  private static final int INDENT = 3;
  private static final String SETTINGS = "settings";

  private TryLines() {}

  /** The first ideas in full, the others by name. */
  static List<Piece> of(PageInput input, Room room, Glyphs glyphs) {
    List<Standing> ideas = input.together().suggestions();
    List<Piece> pieces = new ArrayList<>();
    pieces.add(new Heading(heading(input)));
    if (ideas.isEmpty()) {
      pieces.add(
          Paragraph.of("Nothing yet. The answers so far do not point to one way of playing."));
    }
    int full = Math.min(room.approaches(), ideas.size());
    for (int i = 0; i < full; i++) {
      pieces.add(Paragraph.numbered(i + 1, name(ideas.get(i).approach())));
      pieces.addAll(details(input, ideas.get(i), room, glyphs));
    }
    if (ideas.size() > full) {
      pieces.add(Paragraph.of("Also worth trying: " + briefs(ideas.subList(full, ideas.size()))));
    }
    return pieces;
  }

  private static String heading(PageInput input) {
    return input.together().forReview()
        ? "Draft for a clinician to review: what to try, in this order"
        : "What to try, in this order";
  }

  private static String name(Approach approach) {
    return Phrases.bare(approach.words().name()) + ". " + approach.words().summary();
  }

  private static List<Piece> details(PageInput input, Standing idea, Room room, Glyphs glyphs) {
    Approach approach = idea.approach();
    List<Piece> pieces = new ArrayList<>();
    add(
        pieces,
        "Suggested because: ",
        Reasons.weightiest(idea.inFavour(), approach.id(), room.reasons()));
    add(pieces, "Against it: ", Reasons.weightiest(idea.against(), approach.id(), room.reasons()));
    String change =
        ChangeWords.line(input.bank().questionnaire(), input.changesOf(approach.id()), 1, glyphs);
    if (!change.isEmpty()) {
      pieces.add(Paragraph.under(INDENT, change));
    }
    if (!approach.family().equals(SETTINGS)) {
      pieces.add(Paragraph.under(INDENT, approach.words().borrow()));
      pieces.add(Paragraph.under(INDENT, KitWords.effortAndCost(input.bank(), approach)));
    }
    if (approach.needsMount()) {
      pieces.add(Paragraph.under(INDENT, "Fixing it: " + approach.words().mounting()));
    }
    return pieces;
  }

  private static void add(List<Piece> pieces, String lead, List<String> reasons) {
    if (!reasons.isEmpty()) {
      pieces.add(Paragraph.under(INDENT, lead + String.join(" ", reasons)));
    }
  }

  /** The short names of approaches in one sentence. */
  static String briefs(List<Standing> standings) {
    return Phrases.listed(standings.stream().map(s -> s.approach().words().brief()).toList()) + ".";
  }
}
