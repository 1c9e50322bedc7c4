package closehand.plan.explain;

import closehand.plan.problem.Breach;
import closehand.plan.problem.Placement;
import java.util.List;

/**
 * A place that would cost an action less, and what stands against it in this plan.
 *
 * @param placement the cheaper place
 * @param saving points a minute that the action alone would save
 * @param against the demands that the plan would break with only this action moved; none where only
 *     conventions, set-up or amber loads make the whole dearer
 */
public record Obstacle(Placement placement, long saving, List<Breach> against) {
  /** Copies the list. */
  public Obstacle {
    against = List.copyOf(against);
  }
}
