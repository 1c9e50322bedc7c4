/**
 * What is asked right before somebody practises, points or tries something: that all is made ready,
 * and the questions of which an old answer is worth nothing. Pure; faces only show it.
 */
@NullMarked
package closehand.measure.before;

import org.jspecify.annotations.NullMarked;
