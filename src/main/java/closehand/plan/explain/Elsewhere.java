package closehand.plan.explain;

import closehand.plan.problem.Placement;
import java.util.List;

/**
 * What another place would cost the whole plan, everything else arranged anew around it.
 *
 * @param placement the other place
 * @param extraAtLeast points a minute more, at least; never below 0
 * @param extraAtMost points a minute more, at most; equal to the other where it was proved
 * @param moved ids of the other actions that would change their place, come in or be left out
 */
public record Elsewhere(
    Placement placement, long extraAtLeast, long extraAtMost, List<String> moved) {
  /** Copies the list. */
  public Elsewhere {
    moved = List.copyOf(moved);
  }

  /** Whether the extra cost is known to the point. */
  public boolean isExact() {
    return extraAtLeast == extraAtMost;
  }
}
