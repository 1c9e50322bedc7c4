/**
 * What a way of playing asks of each body part over a session and a week, by published methods.
 *
 * <p>Pure functions and records: effort, presses and holds in, figures with their reasons out.
 * Nothing here decides about a plan, reads a file, or says anything about a person's health.
 */
@NullMarked
package closehand.strain;

import org.jspecify.annotations.NullMarked;
