package closehand.strain;

import java.util.List;

/**
 * One action of a plan as one body part works it, on average over play.
 *
 * @param action the action's id
 * @param name plain words
 * @param kind whether it is pressed, held or moved
 * @param exertion the presses it takes
 * @param elsewhere its next best places under other parts of the body, cheapest first; may be empty
 */
public record Use(
    String action, String name, Kind kind, Exertion exertion, List<Elsewhere> elsewhere) {
  public Use {
    elsewhere = List.copyOf(elsewhere);
  }

  /** How an action is worked. */
  public enum Kind {
    /** Pressed and let go. */
    TAP,
    /** Held down: its time counts as holding. */
    HOLD,
    /** Moved, as a stick or a mouse: its time is movement, not holding. */
    MOVE
  }

  /**
   * Another place for the action.
   *
   * @param input plain words
   * @param extraPoints what the plan would cost more, in its own points
   */
  public record Elsewhere(String input, long extraPoints) {}

  /** The body part. */
  public String effector() {
    return exertion.effector();
  }
}
