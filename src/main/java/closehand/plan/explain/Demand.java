package closehand.plan.explain;

/** Something that was asked for and can be part of a clash. */
public sealed interface Demand {
  /** An action is wished on a certain input. */
  record Pinned(String action) implements Demand {}

  /** An action may not be left out. */
  record MustBePlaced(String action) implements Demand {}

  /** Two actions must be possible at the same moment. */
  record Together(String first, String second) implements Demand {}

  /** A part of the body may do only so much. */
  record LoadLimit(String effector) implements Demand {}

  /** Only so many parts may be used. */
  record MostParts() implements Demand {}
}
