package closehand.plan.problem;

/** What a game wants done with an input, and what an input can do. */
public enum Style {
  /** Pressed and let go. */
  TAP,
  /** Held down for a while. */
  HOLD,
  /** Pressed again and again in a row. */
  REPEAT,
  /** Moved along one line, as far as wanted. */
  ONE_AXIS,
  /** Moved in every direction, as far as wanted. */
  TWO_AXES;

  /** Whether a use lasts, so that the time it lasts counts as load. */
  public boolean isHeld() {
    return this == HOLD || this == ONE_AXIS || this == TWO_AXES;
  }

  /** Whether it is a movement rather than a press. */
  public boolean isAxis() {
    return this == ONE_AXIS || this == TWO_AXES;
  }
}
