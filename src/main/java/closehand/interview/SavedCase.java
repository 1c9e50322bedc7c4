package closehand.interview;

import closehand.bank.Questionnaire;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/**
 * An interview as it is kept between sittings.
 *
 * @param name the pseudonym it goes by; never a person's name
 * @param bank the bank it was made with
 * @param asker who asked last
 * @param route the short or the whole interview
 * @param at the field to open it at again, if any
 * @param answers everything answered, also what does not apply at the moment
 * @param halfTyped what was typed into fields and not given as their answer, by fact
 * @param started when it began, as an ISO date and time with zone
 * @param saved when it was last saved, as an ISO date and time with zone
 */
public record SavedCase(
    String name,
    BankStamp bank,
    Provenance.By asker,
    Interview.Route route,
    Optional<String> at,
    Answers answers,
    Map<String, String> halfTyped,
    String started,
    String saved) {
  /** Copies what was half typed. */
  public SavedCase {
    halfTyped = Collections.unmodifiableMap(new LinkedHashMap<>(halfTyped));
  }

  /**
   * Which bank a case was made with.
   *
   * @param url the canonical address of its questionnaire
   * @param version its version
   * @param fingerprint a number over all its files, in hexadecimal
   */
  public record BankStamp(String url, String version, String fingerprint) {
    /** The stamp of a bank in use. */
    public static BankStamp of(Questionnaire questionnaire, String fingerprint) {
      return new BankStamp(questionnaire.url(), questionnaire.version(), fingerprint);
    }
  }

  /** An interview as it stands, ready to be saved. */
  public static SavedCase of(
      String name, BankStamp bank, Interview interview, String started, String saved) {
    return new SavedCase(
        name,
        bank,
        interview.asker(),
        interview.route(),
        interview.bookmark(),
        interview.answers(),
        interview.halfTyped(),
        started,
        saved);
  }

  /** The same case under another name. */
  public SavedCase named(String other) {
    return new SavedCase(other, bank, asker, route, at, answers, halfTyped, started, saved);
  }

  /** The interview, opened where it stood; send {@link Message.Resume} before going on with it. */
  public Interview open(Questionnaire questionnaire) {
    return Interview.reopen(questionnaire, answers, route, asker, at).halfTyping(halfTyped);
  }
}
