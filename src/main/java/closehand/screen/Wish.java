package closehand.screen;

/** What somebody wants with a saved case. */
public enum Wish {
  /** On where it was left. */
  GO_ON,
  /** Read its pages and change nothing. */
  LOOK,
  /** Remove it with everything kept of it. */
  DISCARD,
  /** Ask again what a review asks. */
  REVIEW,
  /** Keep it sealed from now on. */
  SEAL
}
