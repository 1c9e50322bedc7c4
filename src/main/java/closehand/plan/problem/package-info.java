/**
 * The control plan as a mathematical problem: what is to be placed, where it can go, what that
 * costs, and the price of a given plan.
 *
 * <p>Plain numbers and ids only: nothing here knows a bank, an answer or a person. How the numbers
 * come about is decided by whoever builds a {@link closehand.plan.problem.PlanProblem}.
 */
@NullMarked
package closehand.plan.problem;

import org.jspecify.annotations.NullMarked;
