package closehand.report;

import closehand.rules.Warning;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;

/** The limits that a health team set, in their own words where we have them. */
final class LimitLines {
  private static final String WORDS = "safe.advice.words";
  private static final String PROMISE = "The limit stands on";

  /** What is said where there is a limit whose words nobody brought yet. */
  private static final String BRING_THEM = "We do not have its words yet: please bring them.";

  private LimitLines() {}

  /** The limit in their words, or that the words are still to come; nothing without a limit. */
  static List<Piece> of(PageInput input) {
    Optional<String> words = input.facts().text(WORDS);
    if (words.isPresent()) {
      return List.of(new OwnWords("The limit your health team set:", words.get()));
    }
    return wordsMissing(input)
        ? List.of(Paragraph.item("You have a limit from your health team. " + BRING_THEM))
        : List.of();
  }

  /** The caution about limits with the words in one entry, or with the wish to bring them. */
  static List<Piece> first(PageInput input, Warning warning) {
    String few = CautionText.fewest(warning, 0, new HashSet<>());
    Optional<String> words = input.facts().text(WORDS);
    return words.isPresent()
        ? List.of(new OwnWords(few + " The limit:", words.get()))
        : List.of(Paragraph.item(wordsMissing(input) ? few + " " + BRING_THEM : few));
  }

  /** Whether a limit was told of and its words were not. */
  private static boolean wordsMissing(PageInput input) {
    return input.facts().is("safe.advice", "limits") && input.facts().text(WORDS).isEmpty();
  }

  /** The warning without a promise to print words that we do not have. */
  static Warning withoutPromises(PageInput input, Warning warning) {
    return input.facts().text(WORDS).isPresent()
        ? warning
        : Without.actions(warning, a -> a.startsWith(PROMISE));
  }
}
