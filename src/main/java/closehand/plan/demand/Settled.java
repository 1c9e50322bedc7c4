package closehand.plan.demand;

/**
 * An action that needs no input of its own.
 *
 * @param action the game's action
 * @param name plain words
 * @param how what takes its place
 * @param words in plain words: the setting, or what it is done with
 * @param with id of what it is placed with, or empty
 */
public record Settled(String action, String name, How how, String words, String with) {
  /** What takes the place of an input. */
  public enum How {
    /** A setting of the game does it. */
    SETTING,
    /** It is done with the input of another action. */
    WITH,
    /** It is set once and then stays. */
    ONCE,
    /** The player does not want it. */
    DROPPED,
    /** It writes text. */
    TEXT,
    /** Nothing in the catalogue can do it. */
    NO_WAY
  }
}
