package closehand.plan.problem;

/**
 * The effort of one action on one input, where it is not simply that of the input. For the button
 * of a layer it is what holding the button for this action costs.
 *
 * @param action an action id
 * @param input an input id
 * @param effort instead of the input's own
 * @param extraPoints added once for placing the action there, on whatever layer; 0 or more
 */
public record PairEffort(String action, String input, Effort effort, int extraPoints) {}
