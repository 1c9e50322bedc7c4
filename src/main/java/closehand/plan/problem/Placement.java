package closehand.plan.problem;

/**
 * One action on one place.
 *
 * @param action an action id
 * @param slot where
 * @param mode as the game wants it, or toggled
 */
public record Placement(String action, Slot slot, Mode mode) {}
