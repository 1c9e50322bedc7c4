package closehand.plan.solve;

import java.util.function.BooleanSupplier;
import java.util.function.Consumer;

/**
 * Finds good plans quickly, without proof: a relaxed plan is mended (actions that matter most keep
 * their places), then improved by moving single actions and by putting one in the place of others
 * that find a new place; then a few actions are shaken out and the same begins again (iterated
 * local search, Lourenço, Martin and Stützle 2003). The seed is fixed, so is the number of rounds.
 */
final class Incumbents {
  private static final int MOST_EJECTED = 2;

  private final Tables tables;
  private final Draft draft;
  private final int[] byImportance;
  private final BooleanSupplier stop;

  Incumbents(Tables tables, BooleanSupplier stop) {
    this.tables = tables;
    this.stop = stop;
    draft = new Draft(tables);
    int[] all = new int[tables.actions];
    for (int a = 0; a < all.length; a++) {
      all[a] = a;
    }
    byImportance = Sorting.by(all, a -> -Math.min(tables.leftOut[a], Tables.NEVER));
  }

  /** Mends a plan within what is allowed and improves it by single moves; offers the result. */
  void mend(Space space, int[] start, Consumer<Draft> offer) {
    draft.clear();
    for (int a : byImportance) {
      int p = start[a];
      if (p >= 0 && space.allows(p) && draft.inTheWay(p) == 0 && draft.hasRoom(p)) {
        draft.put(p);
      }
    }
    fill(space);
    settle(space);
    offer.accept(draft);
  }

  /** Goes on from the last plan mended: shakes it and improves it again, this many times. */
  void shake(Space space, int rounds, long seed, Consumer<Draft> offer) {
    Chance chance = new Chance(seed);
    eject(space);
    offer.accept(draft);
    int[] best = draft.chosen.clone();
    long bestCost = draft.cost();
    for (int round = 0; round < rounds && !stop.getAsBoolean(); round++) {
      int shaken = 2 + chance.below(3);
      for (int i = 0; i < shaken; i++) {
        draft.takeOut(chance.below(tables.actions));
      }
      int a = chance.below(tables.actions);
      draft.takeOut(a);
      int p = random(space, a, chance);
      if (p >= 0 && draft.hasRoom(p)) {
        clear(draft.inTheWay(p));
        draft.put(p);
      }
      fill(space);
      settle(space);
      if (draft.cost() < bestCost) {
        eject(space);
      }
      if (draft.cost() <= bestCost) {
        bestCost = draft.cost();
        best = draft.chosen.clone();
        offer.accept(draft);
      } else {
        restore(best);
      }
    }
  }

  private int random(Space space, int a, Chance chance) {
    int p = space.first(a);
    int found = -1;
    for (int seen = 1; p >= 0; p = space.next(a, p + 1), seen++) {
      found = chance.below(seen) == 0 ? p : found;
    }
    return found;
  }

  private void clear(long actions) {
    for (long set = actions; set != 0; set &= set - 1) {
      draft.takeOut(Long.numberOfTrailingZeros(set));
    }
  }

  private void restore(int[] chosen) {
    draft.clear();
    for (int p : chosen) {
      if (p >= 0) {
        draft.put(p);
      }
    }
  }

  /** Places what is left out, where anything fits and is worth it. */
  private void fill(Space space) {
    for (int a : byImportance) {
      if (draft.chosen[a] < 0) {
        place(space, a);
      }
    }
  }

  /** Puts an action where it costs least with all others fixed, or leaves it out. */
  private void place(Space space, int a) {
    int best = -1;
    long least = tables.leftOut[a];
    for (int p = space.first(a); p >= 0; p = space.next(a, p + 1)) {
      if (tables.cost[p] < least && draft.inTheWay(p) == 0 && draft.hasRoom(p)) {
        long added = draft.added(p);
        if (added < least) {
          least = added;
          best = p;
        }
      }
    }
    if (best >= 0) {
      draft.put(best);
    }
  }

  /** Moves single actions until none gains; of equal places the first is taken, so this ends. */
  private void settle(Space space) {
    boolean better = true;
    while (better) {
      better = false;
      for (int a : byImportance) {
        int before = draft.chosen[a];
        if (before >= 0) {
          draft.takeOut(a);
        }
        place(space, a);
        better |= draft.chosen[a] != before;
      }
    }
  }

  /** Puts one action in the place of others, which find a new one, until none gains. */
  private void eject(Space space) {
    boolean better = true;
    while (better && !stop.getAsBoolean()) {
      better = false;
      for (int a : byImportance) {
        better |= ejectFor(space, a);
      }
    }
  }

  private boolean ejectFor(Space space, int a) {
    long before = draft.cost();
    int[] kept = draft.chosen.clone();
    for (int p = space.first(a); p >= 0; p = space.next(a, p + 1)) {
      long away = draft.inTheWay(p);
      if (p != kept[a] && away != 0 && Long.bitCount(away) <= MOST_EJECTED) {
        draft.takeOut(a);
        clear(away);
        if (draft.hasRoom(p)) {
          draft.put(p);
          for (long set = away; set != 0; set &= set - 1) {
            place(space, Long.numberOfTrailingZeros(set));
          }
          if (draft.cost() < before) {
            return true;
          }
        }
        restore(kept);
      }
    }
    return false;
  }
}
