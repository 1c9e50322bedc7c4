package closehand.report;

import closehand.bank.Question;
import closehand.bank.Questionnaire;
import closehand.rules.Finding;
import closehand.rules.Standing;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * Out of all answers that would change a suggestion, those that tell somebody something: answers
 * the suggestion rests on come first, each question once. Answers to warning signs are left out,
 * since a warning sign stops everything and says nothing about this one idea.
 */
public final class TellingChanges {
  private static final int GATE = 3;

  private TellingChanges() {}

  /** The telling ones, most telling first. */
  public static List<Change> of(Questionnaire questionnaire, Standing standing, List<Change> all) {
    Set<String> grounds = new HashSet<>();
    for (List<Finding> some : List.of(standing.inFavour(), standing.against())) {
      some.forEach(f -> grounds.addAll(f.supportedBy()));
    }
    List<Change> first = new ArrayList<>();
    List<Change> second = new ArrayList<>();
    Set<String> seen = new HashSet<>();
    for (Change change : all) {
      boolean gate =
          questionnaire.questionOf(change.fact()).map(Question::safetyWeight).orElse(0) >= GATE;
      boolean settles = change.becomes() != Standing.Status.UNDECIDED;
      if (!gate && settles && seen.add(change.fact())) {
        (grounds.contains(change.fact()) ? first : second).add(change);
      }
    }
    first.addAll(second);
    return first;
  }
}
