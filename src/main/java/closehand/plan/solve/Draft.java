package closehand.plan.solve;

import java.util.Arrays;

/** A plan being changed: what sits where, the load so far, and what a change would cost. */
final class Draft {
  private final Tables tables;
  final int[] chosen;
  private final int[] holder;
  private final long[] load;

  Draft(Tables tables) {
    this.tables = tables;
    chosen = new int[tables.actions];
    holder = new int[tables.slots.size()];
    load = new long[tables.loads.count()];
    clear();
  }

  void clear() {
    Arrays.fill(chosen, -1);
    Arrays.fill(holder, -1);
    Arrays.fill(load, 0);
  }

  void put(int p) {
    int a = tables.action[p];
    chosen[a] = p;
    holder[tables.slot[p]] = a;
    for (int i = 0; i < tables.loads.row[p].length; i++) {
      load[tables.loads.row[p][i]] += tables.loads.amount[p][i];
    }
  }

  void takeOut(int a) {
    int p = chosen[a];
    if (p >= 0) {
      chosen[a] = -1;
      holder[tables.slot[p]] = -1;
      for (int i = 0; i < tables.loads.row[p].length; i++) {
        load[tables.loads.row[p][i]] -= tables.loads.amount[p][i];
      }
    }
  }

  /** The set of placed actions that are in the way of a placement, load aside. */
  long inTheWay(int p) {
    int owner = holder[tables.slot[p]];
    long found = owner >= 0 && owner != tables.action[p] ? 1L << owner : 0;
    for (long set = tables.partners[tables.action[p]]; set != 0; set &= set - 1) {
      int b = Long.numberOfTrailingZeros(set);
      if (chosen[b] >= 0
          && tables.signatures.clash(tables.signatures.of[p], tables.signatures.of[chosen[b]])) {
        found |= 1L << b;
      }
    }
    return found;
  }

  /** Whether the limits leave room for a placement of an action that is not placed now. */
  boolean hasRoom(int p) {
    for (int i = 0; i < tables.loads.row[p].length; i++) {
      int l = tables.loads.row[p][i];
      if (tables.loads.isHard(l) && load[l] + tables.loads.amount[p][i] > tables.loads.limit[l]) {
        return false;
      }
    }
    return true;
  }

  /** What placing an action that is not placed now would cost, leaving out apart. */
  long added(int p) {
    long sum = tables.cost[p];
    int a = tables.action[p];
    for (Conventions.Pair pair : tables.conventions.ofAction.get(a)) {
      int q = chosen[pair.first() == a ? pair.second() : pair.first()];
      if (q >= 0) {
        sum +=
            pair.first() == a
                ? pair.cost(tables.slot[p], tables.slot[q])
                : pair.cost(tables.slot[q], tables.slot[p]);
      }
    }
    for (int i = 0; i < tables.loads.row[p].length; i++) {
      int l = tables.loads.row[p][i];
      if (!tables.loads.isHard(l)) {
        sum += tables.loads.price[l] * (over(l, tables.loads.amount[p][i]) - over(l, 0));
      }
    }
    return sum;
  }

  private long over(int l, long more) {
    return Math.max(0, load[l] + more - tables.loads.limit[l]);
  }

  /** The cost of the whole draft without set-up. */
  long cost() {
    long sum = tables.conventions.cost(tables, chosen);
    for (int a = 0; a < chosen.length; a++) {
      sum += chosen[a] < 0 ? tables.leftOut[a] : tables.cost[chosen[a]];
    }
    for (int l = 0; l < load.length; l++) {
      sum += tables.loads.isHard(l) ? 0 : tables.loads.price[l] * over(l, 0);
    }
    return sum;
  }

  /** Whether every demand is kept, loads and clashes. */
  boolean isAllowed() {
    for (int l = 0; l < load.length; l++) {
      if (tables.loads.isHard(l) && load[l] > tables.loads.limit[l]) {
        return false;
      }
    }
    for (int p : chosen) {
      if (p >= 0 && inTheWay(p) != 0) {
        return false;
      }
    }
    return true;
  }
}
