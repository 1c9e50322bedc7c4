/**
 * What a player can reach and work: answers, approaches and the factors of rules become inputs.
 *
 * <p>Cautious where an answer is missing, and it says which. No game, no search and no words for
 * pages live here.
 */
@NullMarked
package closehand.plan.supply;

import org.jspecify.annotations.NullMarked;
