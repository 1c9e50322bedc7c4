package closehand.screen.practice;

import closehand.bank.StopSign;

/**
 * Something that can be taken on a practice screen.
 *
 * @param digit the digit that takes it at once
 * @param words what it is
 * @param doing what happens
 */
record Choice(int digit, String words, Doing doing) {
  /** What a choice does. */
  enum Doing {
    BEGIN_CHECK,
    USE_KNOWN,
    NOTHING_CAME,
    ONE_BACK,
    GO_ON_CHECKING,
    END_CHECK,
    BEGIN_RUN,
    GO_ON,
    ASK_STOP,
    ASK_BODY,
    TAKE,
    KEEP,
    LEAVE,
    STOP_WISH,
    STOP_PAIN,
    STOP_NUMB,
    STOP_FAINT,
    STOP_CHEST,
    STOP_SPASM,
    STOP_SKIN,
    STOP_BALANCE,
    STOP_DISTRESS,
    STOP_ALONE,
    PAIN;

    private static final String STOP = "STOP_";

    /** Whether it ends the run with a sign. */
    boolean stops() {
      return name().startsWith(STOP);
    }

    /** Whether it stops or leaves, and so need not be in sight to be taken. */
    boolean endsAtOnce() {
      return stops() || this == ASK_STOP || this == LEAVE;
    }

    /** That sign. */
    StopSign sign() {
      return StopSign.valueOf(name().substring(STOP.length()));
    }
  }
}
