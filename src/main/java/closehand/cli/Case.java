package closehand.cli;

import closehand.bank.GameProfile;
import closehand.interview.Answers;
import closehand.interview.Interview;
import closehand.interview.SavedCase;
import closehand.json.CaseDocument;
import closehand.strain.OwnLimits;
import java.util.Map;
import java.util.Optional;

/**
 * Answers somebody wants advice or a page for.
 *
 * @param answers all answers
 * @param name the case's pseudonym, or empty for a file of answers
 * @param interview the interview behind them, where there is one
 * @param document the whole case, where it is a saved one
 * @param profiles profiles of games whose actions were changed, by slot from 1
 * @param limits what was said that no question asks
 */
record Case(
    Answers answers,
    String name,
    Optional<Interview> interview,
    Optional<CaseDocument> document,
    Map<Integer, GameProfile> profiles,
    OwnLimits limits) {
  /** One of which nothing more is known than the interview asks. */
  Case(
      Answers answers,
      String name,
      Optional<Interview> interview,
      Optional<CaseDocument> document,
      Map<Integer, GameProfile> profiles) {
    this(answers, name, interview, document, profiles, OwnLimits.NONE);
  }

  /** The interview as it was saved. */
  Optional<SavedCase> saved() {
    return document.map(CaseDocument::saved);
  }
}
