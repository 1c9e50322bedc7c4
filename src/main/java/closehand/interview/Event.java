package closehand.interview;

import java.util.List;
import java.util.Optional;

/**
 * Something that happened to a case, kept for good. Events are only ever added.
 *
 * <p>Answers stand here as they are written in files, so that they can still be read when the
 * question behind them is no longer asked.
 *
 * @param at when, as an ISO date and time with zone
 * @param elapsedSeconds seconds since the sitting began, which no change of the clock disturbs
 * @param what what happened
 * @param subject the fact, the code of a caution, or empty for the whole case
 * @param from the answer before, if there was one
 * @param to the answer after, if there is one
 * @param by who: the code of a kind of person, or a clinician by name
 * @param why why, where it is known; may be empty
 */
public record Event(
    String at,
    int elapsedSeconds,
    What what,
    String subject,
    Optional<Answer> from,
    Optional<Answer> to,
    String by,
    String why) {
  public Event {
    from = from.map(Event::asInFiles);
    to = to.map(Event::asInFiles);
  }

  /** What can happen. */
  public enum What {
    ANSWERED("answered"),
    CHANGED("changed"),
    CONFIRMED("confirmed"),
    NOTED("noted"),
    SET_ASIDE("setAside"),
    BACK_IN_USE("backInUse"),
    TAKEN_BACK("takenBack"),
    LOWERED("lowered"),
    STANDS_AGAIN("standsAgain"),
    SEALED("sealed"),
    SEALING_REFUSED("sealingRefused"),
    REVIEW_BEGUN("reviewBegun"),
    PLAN_EXPIRED("planExpired");

    private final String code;

    What(String code) {
      this.code = code;
    }

    /** The word used in files. */
    public String code() {
      return code;
    }

    /** What has this code. */
    public static Optional<What> of(String code) {
      for (What what : values()) {
        if (what.code.equals(code)) {
          return Optional.of(what);
        }
      }
      return Optional.empty();
    }
  }

  /** An answer without its kind of question: codes are words like any other. */
  public static Answer asInFiles(Answer answer) {
    Optional<Value> value = answer.given();
    if (value.isPresent() && value.get() instanceof Value.Code code) {
      return new Answer.Given(new Value.Text(code.code()));
    }
    return value.isPresent() && value.get() instanceof Value.Codes codes
        ? new Answer.Given(new Value.Texts(List.copyOf(codes.codes())))
        : answer;
  }
}
