package closehand.plan.solve;

import java.util.function.BooleanSupplier;

/**
 * Raises the bound of one node as far as is worth it: propagate, then steps of the prices, each
 * followed by taking away placements whose reduced cost shows that no better plan has them; then
 * passes over the groups while they gain.
 */
final class Bounding {
  private static final int BEGINNING_STEPS = 40;
  private static final int NODE_STEPS = 12;
  private static final double BEGINNING_STEP = 1;
  private static final double NODE_STEP = 1.2;
  private static final int GROUP_ROUNDS = 6;

  private final Relaxation relaxation;
  private final Tables tables;
  private final Propagation propagation;
  private final Ascent ascent;
  private final GroupBound groups;
  private final Best best;
  private final BooleanSupplier stop;

  Bounding(Relaxation relaxation, Best best, BooleanSupplier stop) {
    this.relaxation = relaxation;
    this.best = best;
    this.stop = stop;
    tables = relaxation.tables;
    propagation = new Propagation(tables);
    ascent = new Ascent(tables, relaxation.rows);
    groups = new GroupBound(relaxation);
  }

  /**
   * The bound of a node; its space shrinks and its prices move.
   *
   * @return the bound, {@link Tables#NEVER} when no better plan is left in it
   */
  long run(Space space, Multipliers m, boolean beginning) {
    if (!propagation.run(space)) {
      return Tables.NEVER;
    }
    ascent.dropIdleRows(space, m);
    m.step = beginning ? BEGINNING_STEP : NODE_STEP;
    long bound = climb(space, m, beginning ? BEGINNING_STEPS : NODE_STEPS);
    for (int round = 0; round < GROUP_ROUNDS && !best.rulesOut(bound); round++) {
      long grouped =
          tables.conventions.groups.isEmpty() ? bound : groups.pass(space, m, best.limit());
      if (best.rulesOut(grouped) || !propagation.run(space)) {
        return Tables.NEVER;
      }
      long solved = solve(space, m);
      if (best.rulesOut(solved)) {
        return Tables.NEVER;
      }
      if (solved < bound + Tables.POINT) {
        return Math.max(bound, solved);
      }
      bound = solved;
    }
    return best.rulesOut(bound) ? Tables.NEVER : bound;
  }

  /** Steps of the prices; the best prices met stay. */
  private long climb(Space space, Multipliers m, int steps) {
    long highest = solve(space, m);
    Multipliers kept = m.copy();
    ascent.begin();
    for (int i = 0; i < steps && !best.rulesOut(highest) && !stop.getAsBoolean(); i++) {
      if (!ascent.step(m, relaxation.chosen, relaxation.bound(), best.cost())) {
        break;
      }
      long bound = solve(space, m);
      ascent.gained(bound > highest, m);
      if (bound > highest) {
        highest = bound;
        kept = m.copy();
      }
    }
    kept.step = m.step;
    m.become(kept);
    return best.rulesOut(highest) ? highest : Math.max(highest, solve(space, m));
  }

  /** The bound for these prices; what cannot be part of a better plan is taken away. */
  private long solve(Space space, Multipliers m) {
    long bound = relaxation.solve(space, m);
    if (best.rulesOut(bound)) {
      return bound;
    }
    best.offerRelaxed(relaxation.chosen);
    boolean removed = false;
    for (int a = 0; a < tables.actions; a++) {
      for (int p = space.first(a); p >= 0; p = space.next(a, p + 1)) {
        if (best.rulesOut(bound + relaxation.reduced(p))) {
          space.remove(p);
          removed = true;
        }
      }
      if (space.mayBeOut(a) && best.rulesOut(bound + relaxation.reducedOut(a))) {
        space.removeOut(a);
        removed = true;
      }
    }
    return removed && !propagation.run(space) ? Tables.NEVER : bound;
  }
}
