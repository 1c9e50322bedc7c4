package closehand.plan.problem;

/**
 * What one placement costs, in points a minute of play, term by term. The terms are rounded so that
 * they add up to the total, which is rounded once.
 *
 * @param press pressing
 * @param hold holding
 * @param layer pressing and holding the button of the layer
 * @param waiting the time each press takes
 * @param miss presses that are not understood
 * @param toggle having to remember what is switched on
 * @param extra what was added for this action and input, and for leaving a habit
 */
public record PlacementCost(
    long press, long hold, long layer, long waiting, long miss, long toggle, long extra) {

  /** All terms together. */
  public long total() {
    return press + hold + layer + waiting + miss + toggle + extra;
  }
}
