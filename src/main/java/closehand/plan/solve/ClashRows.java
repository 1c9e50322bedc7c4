package closehand.plan.solve;

import java.util.ArrayList;
import java.util.List;

/**
 * Rows "at most one of these actions in these signatures", which follow from the pairs that must be
 * possible together: from every largest set of actions that are pairwise partners and every largest
 * set of signatures that all clash; and for each pair of partners, from sets of signatures of the
 * one that all clash with a set of the other. A row inside another one is left out.
 */
final class ClashRows {
  /** One row: actions, and for each the set of its signatures that counts. */
  record Row(int[] action, long[] signatures) {
    long of(int a) {
      for (int i = 0; i < action.length; i++) {
        if (action[i] == a) {
          return signatures[i];
        }
      }
      return 0;
    }

    boolean isInside(Row other) {
      for (int i = 0; i < action.length; i++) {
        if ((signatures[i] & ~other.of(action[i])) != 0) {
          return false;
        }
      }
      return true;
    }
  }

  private static final int MOST = 2000;

  final List<Row> rows;
  private final Tables tables;
  private final List<Row> found = new ArrayList<>();
  private final long[] available;

  ClashRows(Tables tables) {
    this.tables = tables;
    available = new long[tables.actions];
    for (int p = 0; p < tables.placement.length; p++) {
      available[tables.action[p]] |= 1L << tables.signatures.of[p];
    }
    long[] clash = tables.signatures.clashing;
    long self = 0;
    for (int s = 0; s < clash.length; s++) {
      self |= (clash[s] >> s & 1) << s;
    }
    List<Long> together = new ArrayList<>();
    cliques(clash, 0, self, 0, together);
    List<Long> partners = new ArrayList<>();
    cliques(tables.partners, 0, all(tables.actions), 0, partners);
    for (long set : partners) {
      for (long signatures : together) {
        add(set, signatures);
      }
    }
    pairs();
    rows = withoutInner();
  }

  private static long all(int n) {
    return n == 64 ? -1 : (1L << n) - 1;
  }

  /** Every largest set of pairwise neighbours (Bron and Kerbosch 1973, with a pivot). */
  private static void cliques(long[] near, long set, long open, long past, List<Long> found) {
    if (open == 0) {
      if (past == 0 && found.size() < MOST) {
        found.add(set);
      }
      return;
    }
    int pivot = Long.numberOfTrailingZeros(open);
    long rest = open & ~(near[pivot] & ~(1L << pivot));
    long left = open;
    long seen = past;
    while (rest != 0) {
      int x = Long.numberOfTrailingZeros(rest);
      long bit = 1L << x;
      long others = near[x] & ~bit;
      cliques(near, set | bit, left & others, seen & others, found);
      left &= ~bit;
      seen |= bit;
      rest &= ~bit;
    }
  }

  private void add(long actions, long signatures) {
    List<Integer> members = new ArrayList<>();
    for (int a = 0; a < tables.actions; a++) {
      if ((actions >> a & 1) != 0 && (available[a] & signatures) != 0) {
        members.add(a);
      }
    }
    if (members.size() > 1) {
      int[] action = members.stream().mapToInt(Integer::intValue).toArray();
      long[] sets = new long[action.length];
      for (int i = 0; i < sets.length; i++) {
        sets[i] = signatures & available[action[i]];
      }
      found.add(new Row(action, sets));
    }
  }

  private void pairs() {
    for (int a = 0; a < tables.actions; a++) {
      for (int b = 0; b < tables.actions; b++) {
        if (a != b && (tables.partners[a] >> b & 1) != 0) {
          pair(a, b);
        }
      }
    }
  }

  /** For each signature of a, all of b it clashes with, and all of a that clash with all those. */
  private void pair(int a, int b) {
    long[] clash = tables.signatures.clashing;
    for (int s = 0; s < clash.length; s++) {
      long there = clash[s] & available[b];
      if ((available[a] >> s & 1) != 0 && there != 0) {
        long here = 0;
        for (int t = 0; t < clash.length; t++) {
          if ((available[a] >> t & 1) != 0 && (there & ~clash[t]) == 0) {
            here |= 1L << t;
          }
        }
        found.add(
            a < b
                ? new Row(new int[] {a, b}, new long[] {here, there})
                : new Row(new int[] {b, a}, new long[] {there, here}));
      }
    }
  }

  private List<Row> withoutInner() {
    List<Row> kept = new ArrayList<>();
    for (Row row : found) {
      if (kept.stream().noneMatch(row::isInside)) {
        kept.removeIf(k -> k.isInside(row));
        kept.add(row);
      }
    }
    return List.copyOf(kept);
  }
}
