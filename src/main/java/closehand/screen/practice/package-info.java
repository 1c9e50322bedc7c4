/**
 * Practice on the full screen: the button check, rounds of prompts, what came of them, and pointing
 * along a line.
 *
 * <p>Pure models and their screens; times come with the keys. What a run leads to is asked of the
 * program around it.
 */
@NullMarked
package closehand.screen.practice;

import org.jspecify.annotations.NullMarked;
