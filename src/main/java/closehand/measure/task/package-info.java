/**
 * A measured task as it is run: preconditions, practice, goes, rests, stops, and what came of it.
 *
 * <p>Pure: a model, messages and one update function. No clock: every time comes in with a message,
 * in nanoseconds of the edge's own steady clock. What a task is stands in the bank; whether the
 * facts allow it is worked out by whoever may evaluate conditions, and comes in with the setup.
 */
@NullMarked
package closehand.measure.task;

import org.jspecify.annotations.NullMarked;
