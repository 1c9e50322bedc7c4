/**
 * How content becomes a frame: wrapping, scrolling, and what is left out where room is short.
 *
 * <p>Pure. Knows no interview and no terminal; what is said on which screen is decided in {@code
 * closehand.screen}.
 */
@NullMarked
package closehand.screen.view;

import org.jspecify.annotations.NullMarked;
