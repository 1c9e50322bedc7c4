package closehand.rules.proof;

import closehand.bank.Where;
import closehand.interview.Answers;
import closehand.rules.Search;
import java.util.List;
import java.util.Optional;

/**
 * Something about a bank that its author may want to look at. It never blocks.
 *
 * @param kind what it is about
 * @param subjects rule keys, or names of facts, terms, questions, as the kind has it
 * @param details further names: the approach, the options, the number
 * @param witness answers that show it, where answers can
 * @param proof how sure it is
 * @param steps after how many steps the search was given up; 0 unless {@link Proof#NOT_PROVEN}
 * @param where where in the bank to look
 */
public record Advisory(
    Kind kind,
    List<String> subjects,
    List<String> details,
    Optional<Answers> witness,
    Proof proof,
    int steps,
    Where where) {
  public Advisory {
    subjects = List.copyOf(subjects);
    details = List.copyOf(details);
  }

  /** What a search came to: a witness shows it, or that there is none proves it. */
  static Advisory searched(
      Kind kind, List<String> subjects, List<String> details, Search.Found found, Where where) {
    Proof proof = Proof.EXHAUSTED;
    Optional<Answers> witness = Optional.empty();
    int steps = 0;
    if (found instanceof Search.Found.Witness shown) {
      proof = Proof.WITNESS;
      witness = Optional.of(shown.answers());
    } else if (found instanceof Search.Found.GivenUp given) {
      proof = Proof.NOT_PROVEN;
      steps = given.steps();
    }
    return new Advisory(kind, subjects, details, witness, proof, steps, where);
  }

  /** What can be read off the bank without any search. */
  static Advisory readOff(Kind kind, String subject, List<String> details, Where where) {
    return new Advisory(
        kind, List.of(subject), details, Optional.empty(), Proof.READ_OFF, 0, where);
  }

  /** The same with answers that show it. */
  Advisory shownBy(Optional<Answers> answers) {
    return new Advisory(kind, subjects, details, answers, proof, steps, where);
  }

  /** How sure an advisory is. */
  public enum Proof {
    /** The witness shows it. */
    WITNESS,
    /** Every possibility was gone through. */
    EXHAUSTED,
    /** It can be read off the bank. */
    READ_OFF,
    /** The search ran out of its budget: it may or may not be so. */
    NOT_PROVEN
  }

  /** What an advisory is about. */
  public enum Kind {
    /** A rule that no answers make fire. */
    NEVER_FIRES("never-fires"),
    /** A rule that fires whatever the answers. */
    ALWAYS_FIRES("always-fires"),
    /** A rule that another says again, in all or in some, whenever it fires. */
    SAYS_THE_SAME("says-the-same"),
    /** A rule whose points others take off again whenever it fires. */
    CONTRADICTS("contradicts"),
    /** Points for an approach that other rules rule out whenever the rule fires. */
    POINTS_NEVER_COUNT("points-never-count"),
    /** Answers under which every approach is ruled out, settings apart. */
    ALL_EXCLUDED("all-excluded"),
    /** A term that is never, or always, yes, or a number that never has a value. */
    NOBODY_FEEDS("nobody-feeds"),
    /** A term that no rule reads, nor a term that a rule reads. */
    UNUSED_TERM("unused-term"),
    /** A number between the bands of a rule family that none of them covers. */
    BAND_GAP("band-gap"),
    /** Two bands of a rule family that can both fire. */
    BAND_OVERLAP("band-overlap"),
    /** A question on a warning sign for which "don't know" has no way of its own. */
    NO_DOUBT("no-dont-know"),
    /** A question that no answers ever bring up. */
    UNREACHABLE("unreachable-question"),
    /** A question none of whose answers any rule or condition reads, itself or through terms. */
    UNUSED_QUESTION("unused-question"),
    /** Answers of a question that nothing tells apart. */
    ANSWERS_ALIKE("answers-alike");

    private final String code;

    Kind(String code) {
      this.code = code;
    }

    /** The word used in results. */
    public String code() {
      return code;
    }
  }
}
