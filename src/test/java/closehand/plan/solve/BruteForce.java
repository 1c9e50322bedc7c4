package closehand.plan.solve;

import closehand.plan.problem.Action;
import closehand.plan.problem.Placement;
import closehand.plan.problem.Placements;
import closehand.plan.problem.PlanProblem;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalLong;

/**
 * The cheapest allowed plan by trying every one, judged by {@link Reference} alone. Tables of what
 * clashes and what lies near are made first, so that hundreds of problems take seconds.
 */
final class BruteForce {
  private final PlanProblem problem;
  private final Reference reference;
  private final List<Reference.Spot> spots = new ArrayList<>();
  private final int[] first;
  private final boolean[][] apart;
  private final long[][] near;
  private final int[] now;
  private final long[] least;
  private long best = Long.MAX_VALUE;

  private BruteForce(PlanProblem problem) {
    this.problem = problem;
    reference = new Reference(problem);
    List<Action> actions = problem.play().actions();
    first = new int[actions.size() + 1];
    now = new int[actions.size()];
    least = new long[actions.size() + 1];
    for (int a = 0; a < actions.size(); a++) {
      spots.addAll(reference.spots(actions.get(a)));
      first[a + 1] = spots.size();
    }
    for (int a = actions.size() - 1; a >= 0; a--) {
      least[a] = least[a + 1] + cheapest(a);
    }
    apart = new boolean[spots.size()][spots.size()];
    near = new long[spots.size()][spots.size()];
    for (int p = 0; p < spots.size(); p++) {
      for (int q = 0; q < spots.size(); q++) {
        apart[p][q] = apart(spots.get(p), spots.get(q));
        near[p][q] = reference.near(spots.get(p), spots.get(q));
      }
    }
  }

  private long cheapest(int a) {
    long found = leftOut(a);
    for (int p = first[a]; p < first[a + 1]; p++) {
      found = Math.min(found, spots.get(p).cost());
    }
    return found;
  }

  private long leftOut(int a) {
    Action action = problem.play().actions().get(a);
    return problem.prices().leftOutPoints().get(action.importance());
  }

  private boolean apart(Reference.Spot p, Reference.Spot q) {
    return p.placement().slot().equals(q.placement().slot())
        || (reference.mustBeTogether(p.action(), q.action()) && reference.clash(p, q));
  }

  /** The least cost, or empty when no plan is allowed. */
  static OptionalLong leastCost(PlanProblem problem) {
    BruteForce force = new BruteForce(problem);
    force.deepen(0, 0);
    return force.best == Long.MAX_VALUE ? OptionalLong.empty() : OptionalLong.of(force.best);
  }

  /** Tries every spot of the next action; costs only grow, so what is too dear already ends. */
  private void deepen(int a, long sum) {
    if (sum + least[a] >= best) {
      return;
    }
    if (a == now.length) {
      judge();
      return;
    }
    for (int p = first[a]; p < first[a + 1]; p++) {
      long more = more(a, p);
      if (more >= 0) {
        now[a] = p;
        deepen(a + 1, sum + more);
      }
    }
    now[a] = -1;
    deepen(a + 1, sum + leftOut(a));
  }

  private long more(int a, int p) {
    long sum = spots.get(p).cost();
    for (int b = 0; b < a; b++) {
      if (now[b] >= 0) {
        if (apart[now[b]][p]) {
          return -1;
        }
        sum += near[now[b]][p];
      }
    }
    return sum;
  }

  private void judge() {
    List<Placement> list = new ArrayList<>();
    for (int p : now) {
      if (p >= 0) {
        list.add(spots.get(p).placement());
      }
    }
    Placements plan = new Placements(list);
    long cost = reference.cost(plan);
    if (cost < best && reference.broken(plan).isEmpty()) {
      best = cost;
    }
  }
}
