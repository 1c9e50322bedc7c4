package closehand.rules;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Finds which approach leads in each of many complete sets of answers at once. */
final class Leads {
  private final Judge judge;
  private final int approaches;
  private final int[] knownPoints;
  private final boolean[] knownOut;
  private final List<Open> open = new ArrayList<>();

  /** A rule that may or may not fire, its conditions cut down to what is open. */
  private record Open(Node when, Node unless, CompiledRule rule) {}

  /**
   * Begins in one state.
   *
   * @param openRules the rules that may or may not fire and change points or exclusions
   */
  Leads(Program program, Judge judge, long[] state, int[] openRules) {
    this.judge = judge;
    this.approaches = program.bank().approaches().size();
    this.knownPoints = new int[approaches];
    this.knownOut = new boolean[approaches];
    for (CompiledRule rule : program.rules()) {
      if (rule.in(state) == Outcome.TRUE) {
        rule.supports().forEach(s -> knownPoints[s.approach()] += s.points());
        rule.excludes().forEach(e -> knownOut[e] = true);
      }
    }
    for (int index : openRules) {
      CompiledRule rule = program.rules().get(index);
      open.add(new Open(Pruning.of(rule.when(), state), Pruning.of(rule.unless(), state), rule));
    }
  }

  /** The leader in each of the first {@code sets} sets of answers. */
  int[] of(Block block, int sets) {
    int[][] points = new int[approaches][Block.SETS];
    long[] out = new long[approaches];
    for (int i = 0; i < approaches; i++) {
      Arrays.fill(points[i], knownPoints[i]);
      out[i] = knownOut[i] ? -1L : 0;
    }
    for (Open one : open) {
      long fires = block.holds(one.when());
      if (fires != 0) {
        fires &= ~block.holds(one.unless());
        add(one.rule(), fires, points, out);
      }
    }
    int[] leaders = new int[sets];
    Arrays.fill(leaders, Judge.NOBODY);
    for (int approach = 0; approach < approaches; approach++) {
      if (judge.canLead(approach)) {
        lead(approach, points, out[approach], leaders);
      }
    }
    return leaders;
  }

  private static void add(CompiledRule rule, long fires, int[][] points, long[] out) {
    for (CompiledRule.Points given : rule.supports()) {
      int[] of = points[given.approach()];
      for (long rest = fires; rest != 0; rest &= rest - 1) {
        of[Long.numberOfTrailingZeros(rest)] += given.points();
      }
    }
    for (int excluded : rule.excludes()) {
      out[excluded] |= fires;
    }
  }

  private void lead(int approach, int[][] points, long out, int[] leaders) {
    for (int set = 0; set < leaders.length; set++) {
      if ((out & 1L << set) == 0 && points[approach][set] >= Tally.SUGGESTED_FROM) {
        int before = leaders[set];
        boolean ahead =
            before == Judge.NOBODY
                || judge.ahead(approach, points[approach][set] - points[before][set], before);
        leaders[set] = ahead ? approach : before;
      }
    }
  }
}
