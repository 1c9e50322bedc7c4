package closehand.report;

import closehand.rules.Advice;
import closehand.rules.Finding;
import closehand.rules.Standing;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** How every approach stands, with its points and rules, for the clinician. */
final class StandingLines {
  private static final int MOST_CHANGES = 3;

  private StandingLines() {}

  /** The suggested approaches, best first. */
  static List<Piece> suggested(PageInput input, Glyphs glyphs) {
    Advice advice = input.together();
    List<Piece> pieces = new ArrayList<>();
    pieces.add(new Heading("Suggestions, best first"));
    pieces.add(Paragraph.of(Phrases.joined(preface(advice), EqualWords.ranking(input))));
    for (Standing standing : advice.standings()) {
      if (standing.status().suggested()) {
        pieces.addAll(standing(input, standing, glyphs));
      }
    }
    if (advice.standings().stream().noneMatch(s -> s.status().suggested())) {
      pieces.add(Paragraph.of("None so far."));
    }
    return pieces;
  }

  /** The approaches that are not suggested; those without any rule in one line at the end. */
  static List<Piece> others(PageInput input, Glyphs glyphs) {
    List<Piece> pieces = new ArrayList<>();
    List<String> plain = new ArrayList<>();
    for (Standing standing : input.together().standings()) {
      if (isPlain(standing)) {
        plain.add(standing.approach().words().brief());
      } else if (!standing.status().suggested()) {
        pieces.addAll(standing(input, standing, glyphs));
      }
    }
    if (!plain.isEmpty()) {
      pieces.add(Paragraph.item("Neither suggested nor ruled out: " + Phrases.listed(plain) + "."));
    }
    if (!pieces.isEmpty()) {
      pieces.add(0, new Heading("Other approaches"));
    }
    return pieces;
  }

  private static String preface(Advice advice) {
    String points =
        "Points are sums over the rules that fire; 1 is worth trying, 2 and more is strong. In"
            + " brackets: the range that open questions allow.";
    return advice.forReview()
        ? "A draft for a clinician to review, since a part of the body is stopped. " + points
        : points;
  }

  private static boolean isPlain(Standing standing) {
    return standing.status() == Standing.Status.NOT_SUGGESTED
        && standing.inFavour().isEmpty()
        && standing.against().isEmpty();
  }

  private static List<Piece> standing(PageInput input, Standing standing, Glyphs glyphs) {
    List<Piece> pieces = new ArrayList<>();
    pieces.add(Paragraph.item(summary(standing)));
    String id = standing.approach().id();
    standing.ruledOutBy().forEach(f -> pieces.add(row("out ", f)));
    standing.inFavour().forEach(f -> pieces.add(row(signed(f, id), f)));
    standing.against().forEach(f -> pieces.add(row(signed(f, id), f)));
    boolean open = standing.status() != Standing.Status.RULED_OUT;
    String mind =
        Phrases.joined(
            EqualWords.sentence(input, standing.approach()),
            DrivingPart.sentence(input, standing.approach()),
            RestingDigits.unused(input, standing.approach()),
            GamesThatRefuse.sentence(input, standing.approach()));
    if (standing.status().suggested() && !mind.isEmpty()) {
      pieces.add(Paragraph.under(2, mind));
    }
    if (open) {
      standing.mayBeRuledOutBy().forEach(f -> pieces.add(row("could rule it out: ", f)));
    }
    if (open && !standing.waitsFor().isEmpty()) {
      pieces.add(
          Paragraph.under(
              2,
              "Waits for: " + Labels.sentence(input.bank().questionnaire(), standing.waitsFor())));
    }
    String change = ChangeWords.line(input, standing, MOST_CHANGES, glyphs);
    if (!change.isEmpty()) {
      pieces.add(Paragraph.under(2, change));
    }
    return pieces;
  }

  private static Piece row(String lead, Finding finding) {
    return Paragraph.item(2, lead + BasisWords.of(finding.rule()));
  }

  private static String signed(Finding finding, String approach) {
    int points = Reasons.points(finding.rule(), approach);
    return (points > 0 ? "+" : "") + points + " ";
  }

  private static String summary(Standing standing) {
    String name = standing.approach().words().name() + " [" + standing.approach().id() + "]: ";
    String status = standing.status().name().toLowerCase(Locale.ROOT).replace('_', ' ');
    if (standing.status() == Standing.Status.RULED_OUT) {
      return name + status;
    }
    String range =
        standing.lowest() == standing.highest()
            ? ""
            : " (" + standing.lowest() + " to " + standing.highest() + ")";
    return name + status + ", " + Phrases.count(standing.points(), "point") + range;
  }
}
