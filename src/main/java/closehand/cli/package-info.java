/**
 * The front door: commands, exit codes and wiring.
 *
 * <p>Only this package sees every other one, the clock, the file system and the terminal. It holds
 * no knowledge of the trade.
 */
@NullMarked
package closehand.cli;

import org.jspecify.annotations.NullMarked;
