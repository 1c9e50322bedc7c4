/**
 * A trial on the full screen: the same dialogue as line by line, on pages that two keys or the ten
 * digits alone can work.
 *
 * <p>A pure state and its pages; {@link closehand.screen.trial.TrialShowing} holds them for the
 * terminal. What a trial asks, reads and stops for lives in {@code measure.trial}.
 */
@NullMarked
package closehand.screen.trial;

import org.jspecify.annotations.NullMarked;
