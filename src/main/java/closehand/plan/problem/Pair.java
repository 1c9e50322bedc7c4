package closehand.plan.problem;

/** Two ids of the same kind, in no order. */
public record Pair(String first, String second) {}
