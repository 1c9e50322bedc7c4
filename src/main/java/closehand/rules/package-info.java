/**
 * What the answers mean: conditions over facts that may be unknown, and the advice that follows
 * with its reasons.
 *
 * <p>Pure and thread-safe. Knows no screen and no file; every number it uses stands in the bank.
 */
@NullMarked
package closehand.rules;

import org.jspecify.annotations.NullMarked;
