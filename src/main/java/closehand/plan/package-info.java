/**
 * The control plan of a game: which action sits on which input under which part of the body.
 *
 * <p>Brings together what a player can work ({@code supply}), what a game asks ({@code demand}) and
 * the search ({@code solve}). Nothing here reads files or prints.
 */
@NullMarked
package closehand.plan;

import org.jspecify.annotations.NullMarked;
