/**
 * What a wanted game asks of a player: its profile, trimmed by the answers about it.
 *
 * <p>Styles become presses, holds and movements; what a menu can do instead is taken off. No body,
 * no input and no search live here.
 */
@NullMarked
package closehand.plan.demand;

import org.jspecify.annotations.NullMarked;
