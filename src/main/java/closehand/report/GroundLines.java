package closehand.report;

import closehand.bank.Field;
import closehand.interview.Answers;
import closehand.rules.Finding;
import closehand.rules.Standing;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * The answers that the first ideas rest on most, with who gave them and how they are known, for the
 * player's page.
 */
final class GroundLines {
  private static final int MOST = 6;
  private static final int FEWEST = 2;

  private GroundLines() {}

  /** One paragraph; none where nothing is suggested. */
  static List<Piece> of(PageInput input, Room room) {
    Map<String, Field> fields = input.bank().questionnaire().fieldsByFact();
    int most = room.tightest() ? 1 : room.terse() ? FEWEST : MOST;
    List<String> found = new ArrayList<>();
    boolean allTold = true;
    for (String fact : facts(input)) {
      Field field = fields.get(fact);
      Answers.Recorded recorded = input.answers().byFact().get(fact);
      if (found.size() < most && field != null && recorded != null) {
        allTold &= AnswerWords.toldByThePlayer(recorded);
        found.add(
            Phrases.lower(label(input, fact, field))
                + ": "
                + Phrases.lower(AnswerWords.of(field, recorded)));
      }
    }
    return found.isEmpty()
        ? List.of()
        : List.of(
            new Gap(),
            Paragraph.headed(
                "What we found.",
                allTold
                    ? "What counts most, as you told us: " + String.join("; ", found) + "."
                    : "What counts most: "
                        + String.join("; ", found)
                        + ". What is not marked, you told us."));
  }

  /** "Left hand (job of each hand)" where a question asks about several things. */
  private static String label(PageInput input, String fact, Field field) {
    String question = Phrases.bare(Labels.ofQuestion(input.bank().questionnaire(), fact));
    String whole = Phrases.bare(Labels.of(input.bank().questionnaire(), fact));
    return whole.equals(question)
        ? whole
        : Labels.label(field) + " (" + Phrases.lower(question) + ")";
  }

  /**
   * Facts behind the rules that speak for the leading ideas, those about hands and body before seat
   * and games.
   */
  private static Set<String> facts(PageInput input) {
    Set<String> facts = new LinkedHashSet<>();
    for (Standing idea : input.together().suggestions()) {
      for (Finding finding : idea.inFavour()) {
        finding.supportedBy().stream().filter(f -> !f.startsWith("safe.")).forEach(facts::add);
      }
    }
    return facts;
  }
}
