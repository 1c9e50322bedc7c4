package closehand.screen;

/** What can be set of the full screen, in the order in which both faces list it. */
public enum Setting {
  /** For reading along on a call. */
  SHARED,
  /** Whether a number takes an answer at once. */
  NEEDS_ENTER,
  /** Whether letters are commands. */
  LETTERS,
  /** How long the same key is ignored. */
  HOLD,
  /** How long any key is ignored. */
  BOUNCE;

  private static final int[] HOLD_MILLIS = {0, 250, 500, 750, 1000, 1500};
  private static final int[] BOUNCE_MILLIS = {0, 30, 60, 120, 250, 500};

  /** What it is and how it stands, such as "Letters are commands: on". */
  public String words(Settings now) {
    return switch (this) {
      case SHARED ->
          "Shared view, wide apart and without notes for the interviewer: " + onOff(now.shared());
      case NEEDS_ENTER ->
          "A number only moves, and Enter takes the answer: " + onOff(now.needsEnter());
      case LETTERS -> "Letters are commands: " + onOff(now.letters());
      case HOLD -> "The same key again is ignored for: " + time(now.holdMillis());
      case BOUNCE -> "Any key soon after another is ignored for: " + time(now.bounceMillis());
    };
  }

  /** The settings with this one switched over, or one step further and around. */
  public Settings next(Settings now) {
    return switch (this) {
      case SHARED -> now.withShared(!now.shared());
      case NEEDS_ENTER -> now.withEnterNeeded(!now.needsEnter());
      case LETTERS -> now.withLetters(!now.letters());
      case HOLD -> now.withGuards(next(HOLD_MILLIS, now.holdMillis()), now.bounceMillis());
      case BOUNCE -> now.withGuards(now.holdMillis(), next(BOUNCE_MILLIS, now.bounceMillis()));
    };
  }

  private static String onOff(boolean on) {
    return on ? "on" : "off";
  }

  private static String time(int millis) {
    return millis == 0 ? "off" : millis + " thousandths of a second";
  }

  private static int next(int[] steps, int now) {
    for (int step : steps) {
      if (step > now) {
        return step;
      }
    }
    return steps[0];
  }
}
