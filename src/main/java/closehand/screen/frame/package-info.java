/**
 * The small types between what is decided and what is shown: keys, sizes, frames of cells.
 *
 * <p>Pure values. Nothing here knows a terminal, a clock or an interview.
 */
@NullMarked
package closehand.screen.frame;

import org.jspecify.annotations.NullMarked;
