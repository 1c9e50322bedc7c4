/**
 * A measured task on the full screen: the same words as line by line, taken with digits, with Space
 * and Enter, or with letters. While a go is on, every key belongs to it.
 */
@NullMarked
package closehand.screen.task;

import org.jspecify.annotations.NullMarked;
