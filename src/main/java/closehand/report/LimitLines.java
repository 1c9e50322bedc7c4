package closehand.report;

import closehand.bank.Caution;
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
    Caution caution = warning.caution();
    if (input.facts().text(WORDS).isPresent()
        || caution.actions().stream().noneMatch(a -> a.startsWith(PROMISE))) {
      return warning;
    }
    Caution kept =
        new Caution(
            caution.code(),
            caution.classes(),
            caution.lowerable(),
            caution.bindsClinicians(),
            caution.title(),
            caution.message(),
            caution.actions().stream().filter(a -> !a.startsWith(PROMISE)).toList(),
            caution.clinician(),
            caution.contact(),
            caution.where());
    return new Warning(kept, warning.cautionClass(), warning.because(), warning.waitsFor());
  }
}
