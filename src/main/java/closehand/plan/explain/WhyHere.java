package closehand.plan.explain;

import closehand.plan.problem.Placement;
import closehand.plan.problem.PlacementCost;
import java.util.List;

/**
 * Why an action sits where it sits.
 *
 * @param placement where
 * @param cost what that costs, term by term
 * @param next the next best places, cheapest first
 * @param obstacles cheaper places for the action alone and what stands against them, the largest
 *     saving first
 */
public record WhyHere(
    Placement placement, PlacementCost cost, List<Elsewhere> next, List<Obstacle> obstacles) {
  /** Copies the lists. */
  public WhyHere {
    next = List.copyOf(next);
    obstacles = List.copyOf(obstacles);
  }
}
