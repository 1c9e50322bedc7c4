package closehand.plan.solve;

/** The best plan so far, and what a plan must cost at most to be of interest. */
final class Best {
  private final Tables tables;
  private final int tolerancePerTenThousand;
  private final Draft draft;

  /** Just below half a point where costs can be parts of a point, else 0. */
  private final long halfPoint;

  private int[] chosen = {};
  private long cost;

  Best(Tables tables, Budget budget) {
    this.tables = tables;
    tolerancePerTenThousand = budget.tolerancePerTenThousand();
    draft = new Draft(tables);
    halfPoint = tables.loads.isAllHard() ? 0 : Tables.POINT / 2 - 1;
    cost =
        budget.cutoffPoints().isPresent()
            ? Tables.POINT * (budget.cutoffPoints().getAsLong() + 1)
            : Tables.NEVER;
  }

  /** Whether there is a plan. */
  boolean isFound() {
    return chosen.length > 0 || tables.actions == 0;
  }

  /** The chosen placements of the best plan. */
  int[] chosen() {
    return chosen.clone();
  }

  /** The cost of the best plan, or what plans must stay below. */
  long cost() {
    return cost;
  }

  /** A plan that costs more than this is of no interest: it is not better by a whole point. */
  long limit() {
    if (cost >= Tables.NEVER) {
      return Tables.NEVER - 1;
    }
    long better = (points(cost) - 1) * Tables.POINT + halfPoint;
    return Math.min(better, cost - cost / 10_000 * tolerancePerTenThousand);
  }

  /** A cost in points, rounded half up. */
  static long points(long parts) {
    return (2 * parts + Tables.POINT) / (2 * Tables.POINT);
  }

  /** A lower bound in points: no cost at or above it is rounded to less. */
  long boundPoints(long parts) {
    return halfPoint > 0 ? points(parts) : (parts + Tables.POINT - 1) / Tables.POINT;
  }

  /** Whether nothing with this bound can be of interest. */
  boolean rulesOut(long bound) {
    return bound > limit();
  }

  /** Takes a relaxed plan if it happens to keep every demand and is better. */
  void offerRelaxed(int[] relaxed) {
    draft.clear();
    for (int p : relaxed) {
      if (p >= 0) {
        draft.put(p);
      }
    }
    if (draft.isAllowed()) {
      offer(draft);
    }
  }

  /** Takes an allowed plan if it is better. */
  boolean offer(Draft plan) {
    long without = plan.cost();
    if (without >= cost) {
      return false;
    }
    long all = without + setUpOf(plan.chosen);
    if (all >= cost || all >= Tables.NEVER) {
      return false;
    }
    cost = all;
    chosen = plan.chosen.clone();
    return true;
  }

  private long setUpOf(int[] plan) {
    long devices = 0;
    for (int p : plan) {
      devices |= p < 0 ? 0 : tables.slotDevices[tables.slot[p]];
    }
    long sum = 0;
    for (long set = devices; set != 0; set &= set - 1) {
      sum += tables.setUp[Long.numberOfTrailingZeros(set)];
    }
    return sum;
  }
}
