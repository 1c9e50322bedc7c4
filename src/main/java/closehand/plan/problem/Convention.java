package closehand.plan.problem;

/**
 * A wish about where two actions lie to each other, worth points and never a must. The distance of
 * two inputs of one device is the larger of the steps across and the steps down.
 *
 * @param first an action id
 * @param second another action id
 * @param kind which wish
 * @param weightPoints points for each step away from the wish, at most 4 steps; 0 or more
 */
public record Convention(String first, String second, Kind kind, int weightPoints) {

  /** Which wish. */
  public enum Kind {
    /** Next to each other, on the same device and layer. */
    NEAR,
    /** The first above the second: one row up, in about the same column. */
    ABOVE,
    /** The first to the left of the second, in about the same row. */
    LEFT,
    /** Not next to each other: a slip on the one must not set off the other. */
    APART
  }
}
