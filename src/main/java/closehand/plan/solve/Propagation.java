package closehand.plan.solve;

/**
 * Takes away what can no longer be, until nothing changes:
 *
 * <pre>
 * a must be placed, and all its signatures clash with p    -> p of a partner goes
 * a must be placed, and only one place is left for it      -> the place is gone for others
 * least load of all others + load of p &gt; limit             -> p goes
 * </pre>
 */
final class Propagation {
  private final Tables tables;
  private boolean changed;

  Propagation(Tables tables) {
    this.tables = tables;
  }

  /** Takes away what cannot be; false when some action has no choice left. */
  boolean run(Space space) {
    do {
      changed = false;
      for (int a = 0; a < tables.actions; a++) {
        if (!space.mayBeOut(a)) {
          if (space.first(a) < 0) {
            return false;
          }
          forced(space, a);
        }
      }
      for (int l = 0; l < tables.loads.count(); l++) {
        if (tables.loads.isHard(l) && !load(space, l)) {
          return false;
        }
      }
    } while (changed);
    return true;
  }

  private void forced(Space space, int a) {
    long signatures = space.signatures(a);
    int place = tables.slot[space.first(a)];
    for (int p = space.first(a); p >= 0; p = space.next(a, p + 1)) {
      place = tables.slot[p] == place ? place : -1;
    }
    for (int b = 0; b < tables.actions; b++) {
      boolean partner = (tables.partners[a] >> b & 1) != 0;
      if (b != a && (partner || place >= 0)) {
        for (int p = space.first(b); p >= 0; p = space.next(b, p + 1)) {
          long clash = tables.signatures.clashing[tables.signatures.of[p]];
          if (tables.slot[p] == place || (partner && (signatures & ~clash) == 0)) {
            space.remove(p);
            changed = true;
          }
        }
      }
    }
  }

  private boolean load(Space space, int l) {
    long least = 0;
    long[] leastOf = new long[tables.actions];
    for (int a = 0; a < tables.actions; a++) {
      if (!space.mayBeOut(a)) {
        leastOf[a] = Long.MAX_VALUE;
        for (int p = space.first(a); p >= 0 && leastOf[a] > 0; p = space.next(a, p + 1)) {
          leastOf[a] = Math.min(leastOf[a], amount(p, l));
        }
        leastOf[a] = leastOf[a] == Long.MAX_VALUE ? 0 : leastOf[a];
        least += leastOf[a];
      }
    }
    if (least > tables.loads.limit[l]) {
      return false;
    }
    for (int a = 0; a < tables.actions; a++) {
      for (int p = space.first(a); p >= 0; p = space.next(a, p + 1)) {
        if (least - leastOf[a] + amount(p, l) > tables.loads.limit[l]) {
          space.remove(p);
          changed = true;
        }
      }
    }
    return true;
  }

  private long amount(int p, int l) {
    int[] rows = tables.loads.row[p];
    for (int i = 0; i < rows.length; i++) {
      if (rows[i] == l) {
        return tables.loads.amount[p][i];
      }
    }
    return 0;
  }
}
