package closehand.interview;

import java.util.Set;

/**
 * The few names of a question bank that the program itself knows.
 *
 * <p>Everything else is data: a bank may ask what it likes. These are named here because the order
 * of the interview depends on them: consent comes first after a break, the place of the talk picks
 * the wording, and a rise in pain ends the bodily tasks. A bank without one of them still works;
 * what hangs on it is then left out.
 */
public final class WellKnown {
  /** Whether the player is happy to start or go on; asked again when a case is opened again. */
  public static final String CONSENT_STATE = "consent.state";

  /** Whether the talk is in one room or on a call. */
  public static final String SESSION_MODE = "session.mode";

  /** The answer to {@link #SESSION_MODE} for one room. */
  public static final String ROOM = "room";

  /** The answer to {@link #SESSION_MODE} for a video call. */
  public static final String VIDEO = "video";

  /** The age group; another one ends what was suggested before. */
  public static final String AGE_BAND = "age.band";

  /** Pain at this moment, 0 to 10. */
  public static final String PAIN_NOW = "pain.now";

  /** The section about trials and reviews, which comes after the interview proper. */
  public static final String REVIEW_SECTION = "REV";

  /** How it was on the days after a trial; asked at a review. */
  public static final String REVIEW_AFTER = "review.after24";

  /** The answer to {@link #REVIEW_AFTER} for something that lasted. */
  public static final String LASTING = "lasting";

  /** The answer to {@link #REVIEW_AFTER} for a mark or a feeling that was new and soon gone. */
  public static final String SIGN_SETTLED = "signSettled";

  /** What has changed since; asked at a review. */
  public static final String REVIEW_CHANGED = "review.changed";

  /** The answer to {@link #REVIEW_CHANGED} for nothing. */
  public static final String NOTHING_CHANGED = "none";

  /**
   * A rise in pain by this many points of 10 ends the tasks. Practice estimate, to be confirmed by
   * a clinician.
   */
  public static final double PAIN_RISE_THAT_STOPS = 2;

  /**
   * Pain from this many points of 10 on ends the tasks. Practice estimate, to be confirmed by a
   * clinician.
   */
  public static final double PAIN_THAT_STOPS = 7;

  /** The codes that say "nothing to report" on a question of the safety screen. */
  private static final Set<String> ALL_CLEAR = Set.of("no", "none");

  private WellKnown() {}

  /** Whether this answer to a safety question says that there is nothing to report. */
  public static boolean isAllClear(Answer answer) {
    return answer.given().filter(WellKnown::isAllClear).isPresent();
  }

  private static boolean isAllClear(Value value) {
    if (value instanceof Value.Flag flag) {
      return !flag.value();
    }
    return value instanceof Value.Code code && ALL_CLEAR.contains(code.code());
  }
}
