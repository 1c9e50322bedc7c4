package closehand.plan.problem;

/**
 * Work in a minute of play.
 *
 * @param pressesTenths tenths of a press a minute
 * @param heldMillis milliseconds held a minute
 */
public record Load(long pressesTenths, long heldMillis) {

  /** No work. */
  public static final Load NONE = new Load(0, 0);

  /** Both together. */
  public Load plus(Load other) {
    return new Load(pressesTenths + other.pressesTenths, heldMillis + other.heldMillis);
  }

  /** Whether either kind of work is above this limit. */
  public boolean isAbove(Effector.LoadLimit limit) {
    return pressesTenths > limit.pressesTenths() || heldMillis > limit.heldMillis();
  }
}
