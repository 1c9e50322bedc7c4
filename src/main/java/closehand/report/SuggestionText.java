package closehand.report;

import closehand.rules.Finding;
import closehand.rules.Standing;
import closehand.rules.Warning;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** Advice as text: cautions first, then what to try and why, and what not and why not. */
public final class SuggestionText {
  private static final int MOST_CHANGES = 2;
  private static final int MOST_REASONS = 4;
  private static final int INDENT = 3;

  private SuggestionText() {}

  /** The advice as text. */
  public static String of(PageInput input, Glyphs glyphs) {
    if (!input.ending().isEmpty()) {
      return StopNotice.of(input.ending(), glyphs);
    }
    List<Piece> pieces = new ArrayList<>(TitleLines.provisionalLine(input));
    pieces.addAll(StopNotice.all(input));
    pieces.addAll(cautions(input));
    pieces.addAll(suggestions(input, glyphs));
    pieces.addAll(ruledOut(input));
    pieces.addAll(UndecidedLines.of(input));
    pieces.addAll(GameLines.of(input));
    pieces.addAll(FooterLines.of(input));
    return Sheet.text(pieces, glyphs);
  }

  private static List<Piece> cautions(PageInput input) {
    List<Piece> pieces = new ArrayList<>();
    pieces.addAll(OpenSafety.of(input));
    Set<String> said = new HashSet<>();
    for (Warning warning : input.together().cautions()) {
      pieces.add(
          Paragraph.item(
              CautionText.full(warning, 1, said)
                  + " ["
                  + warning.cautionClass().code()
                  + " "
                  + warning.caution().code()
                  + rules(warning.because())
                  + "]"));
    }
    if (!pieces.isEmpty()) {
      pieces.add(0, new Heading("Take care"));
    }
    return pieces;
  }

  private static List<Piece> suggestions(PageInput input, Glyphs glyphs) {
    List<Piece> pieces = new ArrayList<>();
    pieces.add(new Heading("Suggestions"));
    if (input.together().withheld()) {
      pieces.add(Paragraph.of("Suggestions come after medical review."));
      return pieces;
    }
    if (input.together().forReview()) {
      pieces.add(Paragraph.of("A draft for a clinician to review."));
    }
    String ranking = EqualWords.ranking(input);
    if (!ranking.isEmpty()) {
      pieces.add(Paragraph.of(ranking));
    }
    int place = 0;
    for (Standing idea : input.together().suggestions()) {
      pieces.add(Paragraph.numbered(++place, title(idea)));
      String id = idea.approach().id();
      add(pieces, "Suggested because: ", idea.inFavour(), id);
      add(pieces, "Against it: ", idea.against(), id);
      String mind =
          Phrases.joined(
              EqualWords.sentence(input, idea.approach()),
              DrivingPart.sentence(input, idea.approach()),
              RestingDigits.unused(input, idea.approach()),
              GamesThatRefuse.sentence(input, idea.approach()),
              idea.approach().clinicianFirst() ? idea.approach().words().firstTry() : "");
      if (!mind.isEmpty()) {
        pieces.add(Paragraph.under(INDENT, mind));
      }
      String change = ChangeWords.line(input, idea, MOST_CHANGES, glyphs);
      if (!change.isEmpty()) {
        pieces.add(Paragraph.under(INDENT, change));
      }
    }
    if (place == 0) {
      pieces.add(Paragraph.of("None yet."));
    }
    return pieces;
  }

  private static String title(Standing idea) {
    String strength = idea.status() == Standing.Status.STRONG ? "strong" : "worth trying";
    return idea.approach().words().name() + " [" + idea.approach().id() + "], " + strength;
  }

  private static void add(List<Piece> pieces, String lead, List<Finding> findings, String id) {
    List<String> reasons = Reasons.weightiest(findings, id, MOST_REASONS);
    if (!reasons.isEmpty()) {
      pieces.add(
          Paragraph.under(INDENT, lead + String.join(" ", reasons) + " [" + keys(findings) + "]"));
    }
  }

  private static List<Piece> ruledOut(PageInput input) {
    List<Piece> pieces = new ArrayList<>();
    for (Standing out : input.together().with(Standing.Status.RULED_OUT)) {
      pieces.add(
          Paragraph.item(
              out.approach().words().brief()
                  + ": "
                  + String.join(" ", Reasons.sentences(out.ruledOutBy(), 1))
                  + " ["
                  + keys(out.ruledOutBy())
                  + "]"));
    }
    if (!pieces.isEmpty()) {
      pieces.add(0, new Heading("Ruled out"));
    }
    return pieces;
  }

  private static String rules(List<Finding> findings) {
    return findings.isEmpty() ? "" : ": " + keys(findings);
  }

  private static String keys(List<Finding> findings) {
    return String.join(", ", findings.stream().map(f -> f.rule().key()).toList());
  }
}
