/**
 * Finds the best control plan and proves it: branch and bound over an assignment bound with
 * Lagrange terms and group bounds.
 *
 * <p>Pure and deterministic: all bounds are whole numbers, there is no clock and no chance, and
 * whoever calls says when to stop. Nothing here knows a bank, an answer or a person.
 */
@NullMarked
package closehand.plan.solve;

import org.jspecify.annotations.NullMarked;
