/**
 * Why an approach stands as it does, what would change that, and which few answers decide it.
 *
 * <p>Pure; gives records that a report puts into words. Knows no words for people and no file.
 */
@NullMarked
package closehand.rules.why;

import org.jspecify.annotations.NullMarked;
