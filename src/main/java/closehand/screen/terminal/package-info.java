/**
 * The terminal itself: bytes into keys, frames onto the screen, and the terminal given back.
 *
 * <p>The only place that knows the terminal library, {@code stty} and signals. Nothing here knows
 * an interview.
 */
@NullMarked
package closehand.screen.terminal;

import org.jspecify.annotations.NullMarked;
