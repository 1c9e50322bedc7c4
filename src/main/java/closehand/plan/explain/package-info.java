/**
 * Why a plan is as it is: answers found by changing one thing and solving again.
 *
 * <p>Works on a problem and its outcome alone and gives back numbers and ids; the words are made
 * elsewhere.
 */
@NullMarked
package closehand.plan.explain;

import org.jspecify.annotations.NullMarked;
