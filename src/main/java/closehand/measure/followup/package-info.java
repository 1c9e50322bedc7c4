/**
 * When somebody is to ask again how a player is getting on: days that follow from what was
 * suggested and tried.
 *
 * <p>Pure: today comes from outside. What is due names days and no health facts.
 */
@NullMarked
package closehand.measure.followup;

import org.jspecify.annotations.NullMarked;
