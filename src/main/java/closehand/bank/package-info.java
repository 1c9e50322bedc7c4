/**
 * What can be asked and what is known: questions, approaches, game profiles, rules, cautions,
 * sources.
 *
 * <p>Plain immutable data and the check of a bank. Nothing here asks, decides, reads files or knows
 * the time.
 */
@NullMarked
package closehand.bank;

import org.jspecify.annotations.NullMarked;
