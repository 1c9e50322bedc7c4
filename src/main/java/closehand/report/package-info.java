/**
 * The pages people take home, as plain text, and the short lines that accompany the interview.
 *
 * <p>Pure text from answers and advice. Decides nothing; every sentence traces back to an answer or
 * a rule.
 */
@NullMarked
package closehand.report;

import org.jspecify.annotations.NullMarked;
