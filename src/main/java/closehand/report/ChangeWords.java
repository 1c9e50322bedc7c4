package closehand.report;

import closehand.bank.Question;
import closehand.rules.Standing;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** What would change a suggestion, in words. */
final class ChangeWords {
  /** The safety weight of questions that may stop everything. */
  private static final int GATE = 3;

  private ChangeWords() {}

  /** The line "This would change if: ..." with at most so many answers; empty if there are none. */
  static String line(PageInput input, Standing standing, int most, Glyphs glyphs) {
    List<String> parts = new ArrayList<>();
    for (Change change : telling(input, standing, most)) {
      String label = Phrases.bare(Labels.of(input.bank().questionnaire(), change.fact()));
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

  /** The most telling change in a few words, for the player; empty where nothing is known. */
  static String brief(PageInput input, Standing standing, Glyphs glyphs) {
    for (Change change : telling(input, standing, 1)) {
      return "This would change if your answer to "
          + glyphs.quoted(Phrases.bare(Labels.brief(input.bank().questionnaire(), change.fact())))
          + " was "
          + glyphs.quoted(Phrases.bare(change.whatWouldBe()))
          + ".";
    }
    return "";
  }

  /** The same in fewer words, for an idea below one that has told it in full. */
  static String briefest(PageInput input, Standing standing, Glyphs glyphs) {
    String brief = brief(input, standing, glyphs);
    return brief.replaceFirst("your answer to ", "");
  }

  /**
   * Changes of answers that the reasons rest on, then of others, then of safety questions (which
   * would change nearly everything); one a question.
   */
  static List<Change> telling(PageInput input, Standing standing, int most) {
    Set<String> behindReasons = new HashSet<>();
    standing.inFavour().forEach(f -> behindReasons.addAll(f.supportedBy()));
    standing.against().forEach(f -> behindReasons.addAll(f.supportedBy()));
    Set<String> questions = new HashSet<>();
    List<Change> changes = new ArrayList<>();
    List<Change> all = input.changesOf(standing.approach().id());
    List<Change> worth = all.stream().filter(c -> !obvious(c)).toList();
    for (Rank rank : Rank.values()) {
      for (Change change : worth.isEmpty() ? all : worth) {
        Question question = input.bank().questionnaire().questionOf(change.fact()).orElse(null);
        boolean here = rank(question, behindReasons.contains(change.fact())) == rank;
        if (here
            && changes.size() < most
            && questions.add(question == null ? change.fact() : question.id())) {
          changes.add(change);
        }
      }
    }
    return changes;
  }

  /** That a part without any job works nothing tells nobody anything. */
  private static boolean obvious(Change change) {
    return change.fact().endsWith(".role") || change.whatWouldBe().startsWith("No job today");
  }

  private enum Rank {
    BEHIND_REASONS,
    OTHER,
    SAFETY
  }

  private static Rank rank(@Nullable Question question, boolean behindReasons) {
    if (question != null && question.safetyWeight() >= GATE) {
      return Rank.SAFETY;
    }
    return behindReasons ? Rank.BEHIND_REASONS : Rank.OTHER;
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
