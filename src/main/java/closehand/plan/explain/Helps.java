package closehand.plan.explain;

import closehand.plan.solve.PlanOutcome;

/**
 * A change that brings a left-out action in.
 *
 * @param change the one thing that would be different
 * @param outcome the best plan then
 */
public record Helps(Change change, PlanOutcome outcome) {}
