/**
 * A bank that proves itself: what can never happen, what says the same, what leaves gaps, each with
 * answers that show it or the proof that there are none; and what changes from one bank to another.
 *
 * <p>Pure. Only advises: nothing here stops a bank from being used.
 */
@NullMarked
package closehand.rules.proof;

import org.jspecify.annotations.NullMarked;
