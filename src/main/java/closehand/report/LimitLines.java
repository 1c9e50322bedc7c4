package closehand.report;

import closehand.rules.Warning;
import java.util.List;
import java.util.Optional;

/** The limits that a health team set, in their own words where we have them. */
final class LimitLines {
  private static final String WORDS = "safe.advice.words";
  private static final String PROMISE = "The limit stands on";

  private LimitLines() {}

  /** The limit in their words, or that the words are still to come; nothing without a limit. */
  static List<Piece> of(PageInput input) {
    Optional<String> words = input.facts().text(WORDS);
    if (words.isPresent()) {
      return List.of(new OwnWords("The limit your health team set:", words.get()));
    }
    return input.facts().is("safe.advice", "limits")
        ? List.of(
            Paragraph.item(
                "You have a limit from your health team. We do not have its words yet: please bring"
                    + " them."))
        : List.of();
  }

  /** The warning without a promise to print words that we do not have. */
  static Warning withoutPromises(PageInput input, Warning warning) {
    return input.facts().text(WORDS).isPresent()
        ? warning
        : Without.actions(warning, a -> a.startsWith(PROMISE));
  }
}
