package closehand.plan.problem;

/** Two actions that must be possible at the same moment, by their ids; never one with itself. */
public record CoPress(String first, String second) {}
