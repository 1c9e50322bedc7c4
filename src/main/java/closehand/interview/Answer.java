package closehand.interview;

import java.util.Optional;

/**
 * An answer: a value, or one of the honest ways of giving none. A question never asked has no
 * answer at all.
 */
public sealed interface Answer {
  /** A value was given. */
  record Given(Value value) implements Answer {}

  /** No value was given, for a reason. */
  record Absent(Reason reason) implements Answer {}

  /** Why there is no value. */
  enum Reason {
    /** "I don't know." On a safety question this counts as unsure, never as no. */
    UNKNOWN("unknown"),
    /** "I would rather not say." Never asked again unasked. */
    DECLINED("declined"),
    /** "This does not apply to me." */
    NOT_APPLICABLE("notApplicable"),
    /** "Ask me later." Also used for what is left for a clinician. */
    LATER("later");

    private final String code;

    Reason(String code) {
      this.code = code;
    }

    /** The word used in answers files. */
    public String code() {
      return code;
    }

    /** The reason with this code. */
    public static Optional<Reason> of(String code) {
      for (Reason reason : values()) {
        if (reason.code.equals(code)) {
          return Optional.of(reason);
        }
      }
      return Optional.empty();
    }
  }

  /**
   * Whether it is to be asked later. Every open question asks this, so it does not compare records:
   * the first comparison of one takes Java longer than the whole rest of a walk.
   */
  default boolean isPutOff() {
    return this instanceof Absent absent && absent.reason() == Reason.LATER;
  }

  /** The value, if one was given. */
  default Optional<Value> given() {
    return this instanceof Given given ? Optional.of(given.value()) : Optional.empty();
  }
}
