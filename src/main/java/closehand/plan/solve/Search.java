package closehand.plan.solve;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import java.util.PriorityQueue;
import java.util.function.BooleanSupplier;

/**
 * Best-first branch and bound with dives (Land and Doig 1960). All open parts stand in one queue,
 * lowest bound first; from the part taken out the search dives into the best choice until nothing
 * better can be there, and leaves the other choices in the queue. Regimes are the first parts. The
 * least bound of all open parts bounds every plan.
 */
final class Search {
  private static final int BEGINNING_VISITS = 3;
  private static final int SHAKEN_REGIMES = 3;
  private static final int SHAKES = 60;
  private static final long FIRST_LATER_SHAKE = 64;

  private final Tables tables;
  private final Budget budget;
  private final BitSet among;
  private final long must;
  private final Best best;
  private final Relaxation relaxation;
  private final Bounding bounding;
  private final Branching branching;
  private final Incumbents incumbents;
  private final PriorityQueue<Node> open = new PriorityQueue<>();
  private final List<PlanOutcome.Progress> trace = new ArrayList<>();
  private long numbered;
  private long nodes;
  private int shaken;
  private long nextShake = FIRST_LATER_SHAKE;
  private boolean stopped;
  private boolean beginningsCut;
  private long proven;

  /** A search among all placements. */
  Search(Tables tables, Budget budget) {
    this(tables, budget, all(tables), 0);
  }

  /** A search among certain placements, in which certain actions may not be left out. */
  Search(Tables tables, Budget budget, BitSet among, long must) {
    this.tables = tables;
    this.among = among;
    this.must = must;
    this.budget = budget;
    best = new Best(tables, budget);
    relaxation = new Relaxation(tables, new ClashRows(tables));
    BooleanSupplier stop = this::stopNow;
    bounding = new Bounding(relaxation, best, stop);
    branching = new Branching(relaxation);
    incumbents = new Incumbents(tables, stop);
  }

  /** Leaves out the local search, where any plan within the cutoff will do. */
  void withoutShaking() {
    shaken = SHAKEN_REGIMES;
    nextShake = Long.MAX_VALUE;
  }

  private static BitSet all(Tables tables) {
    BitSet all = new BitSet();
    all.set(0, tables.placement.length);
    return all;
  }

  private Space space(Regimes.Regime regime) {
    Space space = new Space(tables, regime, among);
    for (long set = must; set != 0; set &= set - 1) {
      space.removeOut(Long.numberOfTrailingZeros(set));
    }
    return space;
  }

  private boolean stopNow() {
    stopped = stopped || budget.stop().getAsBoolean();
    return stopped;
  }

  /** Searches until the proof, the end of the budget or the stop. */
  void run(Optional<int[]> previous) {
    beginnings(previous);
    if (beginningsCut) {
      // Parts that were never looked at have no bound, so nothing is proved of any plan.
      Node first = open.poll();
      if (first != null) {
        nodes++;
        work(first);
      }
      return;
    }
    if (previous.isPresent() && best.isFound()) {
      shaken = SHAKEN_REGIMES; // the plan before a small change is good already
    }
    boolean within = true;
    while (within && !open.isEmpty() && !best.rulesOut(open.peek().bound())) {
      Node node = open.poll();
      while (node != null && within) {
        note(node.bound());
        nodes++;
        Node next = work(node);
        within = nodes < budget.nodes() && !stopNow();
        if (!within && next != null) {
          open.add(next);
        }
        node = next;
      }
    }
    note(Tables.NEVER);
  }

  private void beginnings(Optional<int[]> previous) {
    int looked = 0;
    List<Regimes.Regime> regimes = Regimes.of(tables, this::stopNow);
    beginningsCut = stopped;
    for (Regimes.Regime regime : regimes) {
      Space space = space(regime);
      Multipliers m = relaxation.noMultipliers();
      long bound = relaxation.solve(space, m);
      if (bound < Tables.NEVER) {
        add(new Node(space, m, -1, Choice.OUT, bound, 0, 0, numbered++));
      }
      previous.filter(p -> fits(p, space)).ifPresent(p -> incumbents.mend(space, p, best::offer));
      looked++;
      if (looked >= Regimes.ALWAYS && looked < regimes.size() && stopNow()) {
        beginningsCut = true;
        break;
      }
    }
  }

  private static boolean fits(int[] plan, Space space) {
    for (int p : plan) {
      if (p >= 0 && !space.allows(p)) {
        return false;
      }
    }
    return true;
  }

  private void add(Node node) {
    if (!best.rulesOut(node.bound())) {
      open.add(node);
    }
  }

  /** Works on one node; gives back the child to dive into, or null. */
  private @org.jspecify.annotations.Nullable Node work(Node node) {
    Space space = node.open();
    Multipliers m = node.prices().copy();
    boolean beginning = node.action() < 0;
    long bound = Math.max(node.bound(), bounding.run(space, m, beginning));
    if (best.rulesOut(bound)) {
      return null;
    }
    int[] relaxed = relaxation.chosen.clone();
    incumbents.mend(space, relaxed, best::offer);
    if (beginning && node.visits() == 0 && shaken < SHAKEN_REGIMES) {
      shaken++;
      shake(space.regime);
    } else if (nodes >= nextShake) {
      nextShake *= 2;
      shake(space.regime);
    }
    if (beginning && node.visits() + 1 < BEGINNING_VISITS && later(bound)) {
      add(new Node(space, m, -1, Choice.OUT, bound, 0, node.visits() + 1, numbered++));
      return null;
    }
    return best.rulesOut(bound) ? null : split(node, space, m, bound);
  }

  /** Improves the plan mended last, within the whole of a regime. */
  private void shake(Regimes.Regime regime) {
    incumbents.shake(space(regime), SHAKES, 1 + nodes, best::offer);
  }

  private boolean later(long bound) {
    return !open.isEmpty() && open.peek().bound() < bound;
  }

  private @org.jspecify.annotations.Nullable Node split(
      Node node, Space space, Multipliers m, long bound) {
    int a = branching.action(space, m);
    if (a < 0) {
      return null;
    }
    Node child = null;
    for (Choice choice : branching.choices(space, a)) {
      long rise = branching.rise(space, a, choice);
      Node next = new Node(space, m, a, choice, bound + rise, node.depth() + 1, 0, numbered++);
      if (child == null || next.compareTo(child) < 0) {
        if (child != null) {
          add(child);
        }
        child = next;
      } else {
        add(next);
      }
    }
    return child != null && best.rulesOut(child.bound()) ? null : child;
  }

  /** Keeps the trace, from the bound of the part worked on. */
  private void note(long working) {
    long least = Math.min(working, open.isEmpty() ? Tables.NEVER : open.peek().bound());
    proven = Math.max(proven, Math.min(least, best.limit() + 1));
    PlanOutcome.Progress now = new PlanOutcome.Progress(nodes, points(best.cost()), bound());
    PlanOutcome.Progress last = trace.isEmpty() ? null : trace.get(trace.size() - 1);
    if (last == null || last.best() != now.best() || last.bound() != now.bound()) {
      trace.add(now);
    }
  }

  private static long points(long parts) {
    return parts >= Tables.NEVER ? Long.MAX_VALUE : Best.points(parts);
  }

  /** No plan of interest costs less, in points. */
  long bound() {
    return best.boundPoints(proven);
  }

  Best best() {
    return best;
  }

  long nodes() {
    return nodes;
  }

  boolean isStopped() {
    return stopped;
  }

  /** Whether nothing that could be of interest is left open. */
  boolean isDone() {
    return !beginningsCut && (open.isEmpty() || best.rulesOut(open.peek().bound()));
  }

  List<PlanOutcome.Progress> trace() {
    return List.copyOf(trace);
  }
}
