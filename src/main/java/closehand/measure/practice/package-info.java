/**
 * Practice with one's own set-up: which key each input sends, short rounds of prompts in a game's
 * proportions, pointing along a line, and what all this tells of each input.
 *
 * <p>Pure: times arrive with the keys, chance comes from a seed given from outside. Knows inputs
 * and actions by name only; what a control plan makes of the results is told in {@code report}.
 * Differences within one person are all that is ever measured here; nothing is compared with other
 * people.
 */
@NullMarked
package closehand.measure.practice;

import org.jspecify.annotations.NullMarked;
