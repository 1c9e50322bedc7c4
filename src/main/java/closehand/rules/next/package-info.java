/**
 * What to ask next: the question that tells most for what it asks of the player, warning signs
 * before all else, with the reason said.
 *
 * <p>Pure; the same for the same answers and bank. Decides no advice and knows no words for people.
 */
@NullMarked
package closehand.rules.next;

import org.jspecify.annotations.NullMarked;
