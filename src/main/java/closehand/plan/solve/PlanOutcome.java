package closehand.plan.solve;

import closehand.plan.problem.Placements;
import closehand.plan.problem.PlanCost;
import java.util.List;

/**
 * What the search found.
 *
 * @param plan the best plan found; empty when {@link Status#IMPOSSIBLE}
 * @param cost what it costs, term by term
 * @param best its cost in points
 * @param bound no plan costs less than this, in points
 * @param status how sure that is
 * @param nodes the parts of the search that were opened
 * @param trace how best and bound came together, one line a change
 */
public record PlanOutcome(
    Placements plan,
    PlanCost cost,
    long best,
    long bound,
    Status status,
    long nodes,
    List<Progress> trace) {

  /** Copies the trace. */
  public PlanOutcome {
    trace = List.copyOf(trace);
  }

  /** How sure the answer is. */
  public enum Status {
    /** No plan is better by a whole point. */
    PROVED,
    /** No plan is better by more than the tolerance asked for. */
    NEAR_ENOUGH,
    /** The nodes ran out first. */
    OUT_OF_NODES,
    /** Stopped from outside; a repeat may differ. */
    STOPPED,
    /** No plan keeps all demands, or none costs as little as was asked for. */
    IMPOSSIBLE
  }

  /** One moment of the search, in points. */
  public record Progress(long nodes, long best, long bound) {}

  /** How far the plan can be from the best, in hundredths of a per cent, rounded up. */
  public long gapPerTenThousand() {
    return best == 0 ? 0 : (10_000 * (best - bound) + best - 1) / best;
  }
}
