/**
 * JSON in and out: located values that know file, line, column and pointer, and the reader or
 * writer of every format.
 *
 * <p>The only package that touches Jackson. Bad input becomes a Problem with its place, never an
 * exception.
 */
@NullMarked
package closehand.json;

import org.jspecify.annotations.NullMarked;
