package closehand.plan.solve;

import java.util.BitSet;

/**
 * What is still allowed in one part of the search: placements, and actions that may be left out.
 */
final class Space {
  final Tables tables;
  final Regimes.Regime regime;
  private final BitSet allowed;
  private long mayBeOut;

  /** Everything that one regime allows among certain placements. */
  Space(Tables tables, Regimes.Regime regime, BitSet among) {
    this.tables = tables;
    this.regime = regime;
    allowed = new BitSet(tables.placement.length);
    for (int p = 0; p < tables.placement.length; p++) {
      allowed.set(p, among.get(p) && regime.slots().get(tables.slot[p]));
    }
    for (int a = 0; a < tables.actions; a++) {
      mayBeOut |= tables.leftOut[a] < Tables.NEVER ? 1L << a : 0;
    }
  }

  private Space(Space other) {
    tables = other.tables;
    regime = other.regime;
    allowed = (BitSet) other.allowed.clone();
    mayBeOut = other.mayBeOut;
  }

  Space copy() {
    return new Space(this);
  }

  boolean allows(int p) {
    return allowed.get(p);
  }

  boolean mayBeOut(int a) {
    return (mayBeOut >> a & 1) != 0;
  }

  void remove(int p) {
    allowed.clear(p);
  }

  void removeOut(int a) {
    mayBeOut &= ~(1L << a);
  }

  /** The first allowed placement of an action from p on, or -1. */
  int next(int a, int p) {
    int found = allowed.nextSetBit(p);
    return found < tables.first[a + 1] ? found : -1;
  }

  /** The first allowed placement of an action, or -1. */
  int first(int a) {
    return next(a, tables.first[a]);
  }

  /** How many choices an action has, leaving it out included. */
  int choices(int a) {
    return allowed.get(tables.first[a], tables.first[a + 1]).cardinality() + (mayBeOut(a) ? 1 : 0);
  }

  /** Whether an action has one placement and no other choice. */
  boolean isSettled(int a) {
    return !mayBeOut(a) && choices(a) == 1;
  }

  /** The signatures an action can still have. */
  long signatures(int a) {
    long found = 0;
    for (int p = first(a); p >= 0; p = next(a, p + 1)) {
      found |= 1L << tables.signatures.of[p];
    }
    return found;
  }

  /** Leaves an action only the placements of one signature and mode, or one placement. */
  void keep(int a, Choice choice) {
    for (int p = first(a); p >= 0; p = next(a, p + 1)) {
      if (!choice.admits(tables, p)) {
        allowed.clear(p);
      }
    }
    if (!choice.out()) {
      removeOut(a);
    }
  }
}
