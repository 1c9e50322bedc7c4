package closehand.plan.problem;

/**
 * Something a game lets its player do.
 *
 * @param id unique among actions
 * @param name how the player calls it
 * @param style what the game wants done with the input
 * @param perMinuteTenths how often, in tenths of a time a minute, 0 to 6,000
 * @param holdMillis how long one use lasts, 0 to 60,000; ignored for taps
 * @param warningMillis the longest time from the wish to the effect, movement and delay of the
 *     device together; {@link #NO_HURRY} where any time will do
 * @param importance 0 to 5; 5 means that the game cannot be played without it
 * @param toggleOffered whether the game can turn holding into one tap for on and one for off
 */
public record Action(
    String id,
    String name,
    Style style,
    int perMinuteTenths,
    int holdMillis,
    int warningMillis,
    int importance,
    boolean toggleOffered) {

  /** A warning time so long that nothing is too slow. */
  public static final int NO_HURRY = Integer.MAX_VALUE;

  /** The highest importance: the game cannot be played without the action. */
  public static final int ESSENTIAL = 5;
}
