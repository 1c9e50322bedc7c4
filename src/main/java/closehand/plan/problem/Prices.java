package closehand.plan.problem;

import java.util.List;

/**
 * What is paid for what.
 *
 * @param leftOutPoints points for leaving out an action, by importance 0 to 5, six numbers
 * @param missPoints tenths of the points of a press that was not understood, by importance 0 to 5:
 *     2 means 20 points
 * @param togglePoints points for having to remember that an action is switched on
 * @param waitPointsPerSecond points for each second that a press takes
 * @param longHoldMillis holding longer than this is impossible on a layer
 * @param pairs efforts that differ from that of the input for one action
 */
public record Prices(
    List<Integer> leftOutPoints,
    List<Integer> missPoints,
    int togglePoints,
    int waitPointsPerSecond,
    int longHoldMillis,
    List<PairEffort> pairs) {
  /** Copies the lists. */
  public Prices {
    leftOutPoints = List.copyOf(leftOutPoints);
    missPoints = List.copyOf(missPoints);
    pairs = List.copyOf(pairs);
  }
}
