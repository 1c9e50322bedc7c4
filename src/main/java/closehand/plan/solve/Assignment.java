package closehand.plan.solve;

import java.util.Arrays;

/**
 * The cheapest way to give each action a place of its own or to leave it out, by shortest
 * augmenting paths (Kuhn 1955; Edmonds and Karp 1972; Jonker and Volgenant 1987):
 *
 * <pre>
 * min  sum c(a,s) x(a,s) + sum out(a) o(a)    every action once, every place at most once
 * max  sum u(a) + sum v(s)                    u(a) + v(s) &lt;= c(a,s),  u(a) &lt;= out(a),  v(s) &lt;= 0
 * </pre>
 *
 * Leaving out needs no column of its own: it ends a path, and an action once left out never comes
 * back, because places only become dearer as more actions are added.
 */
final class Assignment {
  static final int LEFT_OUT = -1;

  /** The price of each action in the dual problem. */
  final long[] u;

  /** The price of each place in the dual problem, 0 or below. */
  final long[] v;

  /** The place of each action, or {@link #LEFT_OUT}. */
  final int[] place;

  private final int[] holder;
  private final int[] from;
  private final long[] distance;
  private final boolean[] done;
  private int places;

  Assignment(int actions, int mostPlaces) {
    u = new long[actions];
    v = new long[mostPlaces];
    place = new int[actions];
    holder = new int[mostPlaces];
    from = new int[mostPlaces];
    distance = new long[mostPlaces];
    done = new boolean[mostPlaces];
  }

  /**
   * Solves for costs given as a row of {@code places} an action.
   *
   * @return the least total cost, or {@link Tables#NEVER} when some action has nowhere to go
   */
  long solve(long[][] cost, long[] out, int placesInUse) {
    places = placesInUse;
    Arrays.fill(v, 0, places, 0);
    Arrays.fill(holder, 0, places, -1);
    long total = 0;
    for (int a = 0; a < u.length; a++) {
      if (!insert(a, cost, out)) {
        return Tables.NEVER;
      }
    }
    for (int a = 0; a < u.length; a++) {
      total += u[a];
    }
    for (int s = 0; s < places; s++) {
      total += v[s];
    }
    return total;
  }

  /** Finds the shortest path from a new action to a free place or to an action left out. */
  private boolean insert(int added, long[][] cost, long[] out) {
    Arrays.fill(distance, 0, places, Tables.NEVER);
    Arrays.fill(done, 0, places, false);
    int row = added;
    long reached = 0;
    u[added] = 0;
    long end = Tables.NEVER;
    int lastRow = -1;
    int via = -1;
    int last = -1;
    while (true) {
      if (out[row] < Tables.NEVER && reached + out[row] - u[row] < end) {
        end = reached + out[row] - u[row];
        lastRow = row;
        via = last;
      }
      int best = -1;
      long bestDistance = end;
      long[] costs = cost[row];
      for (int s = 0; s < places; s++) {
        if (!done[s]) {
          if (costs[s] < Tables.NEVER) {
            long d = reached + costs[s] - u[row] - v[s];
            if (d < distance[s]) {
              distance[s] = d;
              from[s] = row;
            }
          }
          if (distance[s] < bestDistance) {
            bestDistance = distance[s];
            best = s;
          }
        }
      }
      if (best < 0) {
        if (end >= Tables.NEVER) {
          return false;
        }
        raise(added, end);
        place[lastRow] = LEFT_OUT;
        augment(via, added);
        return true;
      }
      if (holder[best] < 0) {
        raise(added, bestDistance);
        augment(best, added);
        return true;
      }
      done[best] = true;
      reached = bestDistance;
      row = holder[best];
      last = best;
    }
  }

  /** Moves the dual prices of everything nearer than the end of the path. */
  private void raise(int added, long end) {
    u[added] += end;
    for (int s = 0; s < places; s++) {
      if (done[s]) {
        u[holder[s]] += end - distance[s];
        v[s] -= end - distance[s];
      }
    }
  }

  /** Hands places on along the path that ends in this place. */
  private void augment(int end, int added) {
    int s = end;
    while (s >= 0) {
      int row = from[s];
      int next = row == added ? -1 : place[row];
      holder[s] = row;
      place[row] = s;
      s = next;
    }
  }
}
