/**
 * The line-by-line face: questions as text, answers as typed numbers or words.
 *
 * <p>Serves screen readers, pipes and small terminals. Turns text into messages and shows what came
 * of them.
 */
@NullMarked
package closehand.line;

import org.jspecify.annotations.NullMarked;
