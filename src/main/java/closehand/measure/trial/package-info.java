/**
 * Trials of a set-up in a real game: what was tried, how it went and how it felt; the dialogue that
 * asks for it, with its stop signs; and two set-ups side by side.
 *
 * <p>Pure: dates come from outside as text. A trial is about a set-up; nothing here rates a person.
 */
@NullMarked
package closehand.measure.trial;

import org.jspecify.annotations.NullMarked;
