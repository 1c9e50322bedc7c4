package closehand.report;

import closehand.rules.proof.Advisory;
import closehand.rules.proof.Advisory.Kind;
import java.util.List;

/** The findings of a deep check in words. */
final class AdvisoryWords {
  private static final int MOST_NAMES = 6;

  private AdvisoryWords() {}

  /** What all findings of a kind are, in the plural. */
  static String title(Kind kind) {
    return switch (kind) {
      case NEVER_FIRES -> "rules that never fire";
      case ALWAYS_FIRES -> "rules that always fire";
      case SAYS_THE_SAME -> "rules that say the same";
      case CONTRADICTS -> "points that other rules take off again";
      case POINTS_NEVER_COUNT -> "points for what is ruled out then";
      case ALL_EXCLUDED -> "everything ruled out at once";
      case UNUSED_QUESTION -> "questions that no rule reads";
      case ANSWERS_ALIKE -> "answers that no rule tells apart";
      case NOBODY_FEEDS -> "terms that no answer changes";
      case UNUSED_TERM -> "terms that no rule reads";
      case BAND_GAP -> "bands with a gap between them";
      case BAND_OVERLAP -> "bands that overlap";
      case NO_DOUBT -> "warning signs that do not hear \"don't know\"";
      case UNREACHABLE -> "questions that never come up";
    };
  }

  /**
   * One finding.
   *
   * @param subjects the rules, terms, facts or questions it is about
   */
  static String sentence(Advisory one, List<String> subjects) {
    String first = subjects.isEmpty() ? "" : subjects.get(0);
    List<String> others = subjects.subList(Math.min(1, subjects.size()), subjects.size());
    String detail = few(one.details(), Integer.MAX_VALUE);
    return switch (one.kind()) {
      case NEVER_FIRES -> first + " never fires, whatever is answered.";
      case ALWAYS_FIRES -> first + " always fires, whatever is answered.";
      case SAYS_THE_SAME -> same(first, few(others, MOST_NAMES), detail);
      case CONTRADICTS ->
          "Whenever "
              + first
              + " gives "
              + detail
              + " points, they are taken off again, by "
              + few(others, MOST_NAMES)
              + ".";
      case POINTS_NEVER_COUNT ->
          "The points of "
              + first
              + " for "
              + detail
              + " never count: "
              + detail
              + " is ruled out whenever "
              + first
              + " fires, by "
              + few(others, MOST_NAMES)
              + ".";
      case ALL_EXCLUDED -> "Every approach but settings can be ruled out at once.";
      case UNUSED_QUESTION ->
          "Neither a rule nor another question's condition reads " + first + ".";
      case ANSWERS_ALIKE ->
          "Nothing tells " + detail + " apart in " + few(subjects, MOST_NAMES) + ".";
      case NOBODY_FEEDS -> "The term " + first + " is " + detail + ", whatever is answered.";
      case UNUSED_TERM -> "No rule reads the term " + first + ".";
      case BAND_GAP ->
          "Between the bands of "
              + few(subjects, MOST_NAMES)
              + " lie values of "
              + detail
              + " for which none of them fires.";
      case BAND_OVERLAP -> "The bands of " + first + " and " + few(others, 1) + " can both fire.";
      case NO_DOUBT ->
          "No rule hears \"don't know\" at the warning sign "
              + first
              + ": it counts neither as \"unsure\" nor as anything else.";
      case UNREACHABLE -> "No answers ever bring up " + first + ".";
    };
  }

  private static String same(String one, String other, String points) {
    return points.isEmpty()
        ? "Whenever " + one + " fires, " + other + " fires too and says all that it says."
        : "Whenever "
            + one
            + " fires, "
            + other
            + " fires too and gives "
            + points
            + " the same points: they count twice.";
  }

  /** Names in a row; of many only so many and how many more there are. */
  static String few(List<String> names, int most) {
    return names.size() <= most
        ? Phrases.and(names)
        : String.join(", ", names.subList(0, most)) + " and " + (names.size() - most) + " more";
  }
}
