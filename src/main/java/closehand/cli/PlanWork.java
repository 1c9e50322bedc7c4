package closehand.cli;

import closehand.plan.solve.Budget;

/**
 * How hard plans are looked for: work, not time, so that every run on every machine agrees. All
 * that shows a plan looks equally hard, so that page, sheet, screen and command show the same one.
 */
final class PlanWork {
  /** Enough for nearly every plan. */
  static final Budget PLAN = Budget.ORDINARY.withNodes(600);

  /** For comparing many plans. */
  static final Budget COMPARED = Budget.ORDINARY.withNodes(150).withTolerance(50);

  /** For telling apart what the rules give equal points. */
  static final Budget ALONE = Budget.ORDINARY.withNodes(100).withTolerance(100);

  /** For trying one change of many. */
  static final Budget TRIED = Budget.ORDINARY.withNodes(40).withTolerance(100);

  private PlanWork() {}
}
