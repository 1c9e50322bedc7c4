package closehand.plan.problem;

/** How an action is worked on its input. */
public enum Mode {
  /** As the game wants it. */
  AS_IS,
  /** Held actions only: one tap for on and one for off. */
  TOGGLED
}
