/**
 * Between practice and the control plan: what of a plan can be practised, what the results are for
 * its supply, and which single changes they speak for, in plain words.
 *
 * <p>Pure. Practice itself knows no plan and the plan knows no practice; both meet here.
 */
@NullMarked
package closehand.report.practice;

import org.jspecify.annotations.NullMarked;
