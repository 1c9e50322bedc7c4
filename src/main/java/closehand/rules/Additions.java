package closehand.rules;

import closehand.bank.CautionClass;
import java.util.BitSet;

/**
 * What single changes of answers add to points and exclusions. Two changes that reach no rule in
 * common add up, so that what leads after both is known without judging the rules again.
 */
final class Additions {
  private final Program program;
  private final Judge judge;
  private final Outcome[] now;
  private final boolean addsUp;
  private final int[] points;
  private final int[] exclusions;

  /**
   * Begins with what came of the rules.
   *
   * @param withheld whether suggestions wait; nothing adds up then, nor while a part is stopped
   */
  Additions(Program program, Judge judge, Outcome[] now, boolean withheld) {
    this.program = program;
    this.judge = judge;
    this.now = now;
    int approaches = program.bank().approaches().size();
    points = new int[approaches];
    exclusions = new int[approaches];
    boolean stopped = withheld;
    for (int i = 0; i < now.length; i++) {
      if (now[i] == Outcome.TRUE) {
        CompiledRule rule = program.rules().get(i);
        add(rule, 1, points, exclusions);
        stopped |=
            rule.strongest().filter(c -> c.compareTo(CautionClass.STOP_PART) >= 0).isPresent();
      }
    }
    addsUp = !stopped;
  }

  /**
   * One change.
   *
   * @param reach the rules it can reach
   * @param stops whether it can reach a rule that stops something
   */
  record Addition(BitSet reach, boolean stops, int[] points, int[] exclusions) {}

  /** What a change adds after which the rules it reaches come out so. */
  Addition of(Influence.Reach reached, Outcome[] then) {
    BitSet reach = new BitSet();
    boolean stops = false;
    int[] morePoints = new int[points.length];
    int[] moreExclusions = new int[points.length];
    for (int i : reached.rules()) {
      CompiledRule rule = program.rules().get(i);
      reach.set(i);
      stops |= rule.stops();
      int more = (then[i] == Outcome.TRUE ? 1 : 0) - (now[i] == Outcome.TRUE ? 1 : 0);
      if (more != 0) {
        add(rule, more, morePoints, moreExclusions);
      }
    }
    return new Addition(reach, stops, morePoints, moreExclusions);
  }

  private static void add(CompiledRule rule, int times, int[] points, int[] exclusions) {
    for (CompiledRule.Points given : rule.supports()) {
      points[given.approach()] += times * given.points();
    }
    for (int excluded : rule.excludes()) {
      exclusions[excluded] += times;
    }
  }

  /** Whether what leads after both follows from what each adds. */
  boolean addUp(Addition one, Addition other) {
    return addsUp && !one.stops() && !other.stops() && !one.reach().intersects(other.reach());
  }

  /** The approach that leads after both; only for changes that add up. */
  int leader(Addition one, Addition other) {
    int best = Judge.NOBODY;
    int most = 0;
    for (int i = 0; i < points.length; i++) {
      int sum = points[i] + one.points()[i] + other.points()[i];
      boolean out = exclusions[i] + one.exclusions()[i] + other.exclusions()[i] > 0;
      if (!out
          && sum >= Tally.SUGGESTED_FROM
          && judge.canLead(i)
          && (best == Judge.NOBODY || judge.ahead(i, sum - most, best))) {
        best = i;
        most = sum;
      }
    }
    return best;
  }
}
