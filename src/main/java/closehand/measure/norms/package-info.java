/**
 * What is usual among non-disabled adults, as context beside a measurement; never a verdict.
 *
 * <p>Pure: tables and formulas. The figures themselves are data of the question banks, read in
 * {@code json}. No table marked as written from memory may be used here.
 */
@NullMarked
package closehand.measure.norms;

import org.jspecify.annotations.NullMarked;
