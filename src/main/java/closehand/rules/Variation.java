package closehand.rules;

import java.util.List;

/**
 * Answers changed, all others the same, and what leads then.
 *
 * @param steps the changed answers; one or two
 * @param then what leads then
 */
public record Variation(List<Step> steps, Verdict then) {
  public Variation {
    steps = List.copyOf(steps);
  }

  /**
   * One changed answer.
   *
   * @param fact the fact id
   * @param to what the answer would have to be
   * @param cellsAway how many steps that rules can tell apart lie between it and the answer given;
   *     1 where answers have no order
   * @param shareOfRange how far it is from a number given, as a share of the allowed range; 0 where
   *     answers have no order
   * @param uncertain whether it lies within what the way of knowing leaves uncertain
   */
  public record Step(
      String fact, Change.To to, int cellsAway, double shareOfRange, boolean uncertain) {}

  /** Whether every change lies within what the ways of knowing leave uncertain. */
  public boolean uncertain() {
    return steps.stream().allMatch(Step::uncertain);
  }

  /** How many steps away all changes are together. */
  public int cellsAway() {
    return steps.stream().mapToInt(Step::cellsAway).sum();
  }

  /** The summed share of the ranges. */
  public double shareOfRange() {
    return steps.stream().mapToDouble(Step::shareOfRange).sum();
  }
}
