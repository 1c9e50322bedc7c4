/**
 * A case on disk: one file that holds an interview, replaced whole after every answer.
 *
 * <p>File handling only; what is inside a case is read and written by the json package.
 */
@NullMarked
package closehand.casefile;

import org.jspecify.annotations.NullMarked;
