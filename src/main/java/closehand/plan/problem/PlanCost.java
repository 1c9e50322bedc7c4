package closehand.plan.problem;

/**
 * What a whole plan costs, in points a minute of play, term by term.
 *
 * @param placements the sum over the placed actions
 * @param leftOut for actions left out
 * @param setUp for the devices in use
 * @param conventions for places hard to remember
 * @param amber for load above where it begins to cost extra, rounded half up
 */
public record PlanCost(
    PlacementCost placements, long leftOut, long setUp, long conventions, long amber) {

  /** All terms together. */
  public long total() {
    return placements.total() + leftOut + setUp + conventions + amber;
  }
}
