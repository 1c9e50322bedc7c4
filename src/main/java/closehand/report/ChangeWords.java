package closehand.report;

import closehand.bank.Questionnaire;
import closehand.rules.Standing;
import java.util.ArrayList;
import java.util.List;

/** What would change a suggestion, in words. */
final class ChangeWords {
  private ChangeWords() {}

  /**
   * The line "This would change if: ..." with at most so many answers; empty where nothing is
   * known.
   */
  static String line(Questionnaire questionnaire, List<Change> changes, int most, Glyphs glyphs) {
    List<String> parts = new ArrayList<>();
    for (Change change : changes.subList(0, Math.min(most, changes.size()))) {
      String label = Phrases.bare(Labels.of(questionnaire, change.fact()));
      parts.add(
          "your answer to "
              + glyphs.quoted(label)
              + " was "
              + glyphs.quoted(Phrases.bare(change.whatWouldBe()))
              + " (then "
              + then(change.becomes())
              + ")");
    }
    return parts.isEmpty() ? "" : "This would change if: " + String.join("; or if ", parts) + ".";
  }

  /** The first change in a few words, for the player; empty where nothing is known. */
  static String brief(Questionnaire questionnaire, List<Change> changes, Glyphs glyphs) {
    if (changes.isEmpty()) {
      return "";
    }
    Change change = changes.get(0);
    return "This would change if: "
        + Phrases.lower(Phrases.bare(Labels.brief(questionnaire, change.fact())))
        + " was "
        + glyphs.quoted(Phrases.bare(change.whatWouldBe()))
        + ".";
  }

  private static String then(Standing.Status status) {
    return switch (status) {
      case STRONG -> "strongly suggested";
      case WORTH_TRYING -> "worth trying";
      case UNDECIDED -> "undecided";
      case NOT_SUGGESTED -> "no longer suggested";
      case RULED_OUT -> "ruled out";
    };
  }
}
