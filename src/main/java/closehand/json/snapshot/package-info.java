/**
 * The bank inside the program in the shape it is used, so that a command need not read a megabyte
 * of JSON first. Made when the program is built; a bank in a folder is always read from its JSON.
 *
 * <p>Every record of a bank has a writing and a reading method side by side here. A component added
 * to a record stops the build until both know it.
 */
@NullMarked
package closehand.json.snapshot;

import org.jspecify.annotations.NullMarked;
