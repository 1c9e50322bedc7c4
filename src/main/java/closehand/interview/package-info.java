/**
 * The interview itself: answers with their provenance, which question applies, which comes next.
 *
 * <p>Pure: a model, messages and one update function. No rule, no screen, no file, no clock.
 */
@NullMarked
package closehand.interview;

import org.jspecify.annotations.NullMarked;
