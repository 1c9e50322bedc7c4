package closehand.measure.trial;

import java.util.OptionalInt;

/**
 * Ten tries of one action.
 *
 * @param action what was to happen in the game, such as "jump"
 * @param worked how many of ten did what was wanted, where counted
 */
public record Tries(String action, OptionalInt worked) {
  /** How many tries are counted. */
  public static final int ALL = 10;

  /** Refuses an empty name and a count outside 0 to 10. */
  public Tries {
    if (action.isBlank()) {
      throw new IllegalArgumentException("an action has a name");
    }
    if (worked.isPresent() && (worked.getAsInt() < 0 || worked.getAsInt() > ALL)) {
      throw new IllegalArgumentException("of ten");
    }
  }

  /** An action that was not counted yet. */
  public static Tries open(String action) {
    return new Tries(action, OptionalInt.empty());
  }
}
