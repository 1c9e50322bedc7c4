package closehand.rules;

import closehand.bank.Approach;
import java.util.Arrays;
import java.util.List;

/**
 * Whether open answers can still change which approach leads. Compares rule by rule, so that points
 * which two approaches share cancel out; an equal sum is settled by the fixed order of ties.
 */
final class Firmness {
  /** Settings go along with any approach, so they never lead. */
  private static final String SETTINGS = "settings";

  private final List<CompiledRule> rules;
  private final List<Approach> approaches;
  private final Ranking ranking;
  private final Tally tally;
  private final Outcome[] outcomes;

  Firmness(Program program, Ranking ranking, Tally tally, Outcome[] outcomes) {
    this.rules = program.rules();
    this.approaches = program.bank().approaches();
    this.ranking = ranking;
    this.tally = tally;
    this.outcomes = outcomes;
  }

  /** Whether the leading suggestion stands whatever the open answers turn out to be. */
  boolean firm() {
    for (int approach : ranking.ordered(tally)) {
      Standing.Status status = tally.status(approach);
      if (status.suggested() && canLead(approach)) {
        return staysAhead(approach);
      }
      if (status == Standing.Status.UNDECIDED) {
        return false;
      }
    }
    return true;
  }

  /** Whether an approach can lead at all. */
  static boolean canLead(Approach approach) {
    return !approach.family().equals(SETTINGS);
  }

  private boolean canLead(int approach) {
    return canLead(approaches.get(approach));
  }

  private boolean staysAhead(int leader) {
    if (tally.mayFallOut(leader)) {
      return false;
    }
    int[] margins = worstMargins(leader);
    for (int rival = 0; rival < margins.length; rival++) {
      boolean counts =
          rival != leader && canLead(rival) && tally.status(rival) != Standing.Status.RULED_OUT;
      int needed = ranking.place(leader) < ranking.place(rival) ? 0 : 1;
      if (counts && margins[rival] < needed) {
        return false;
      }
    }
    return true;
  }

  /** By how much the leader is ahead of each approach when open rules turn out worst for it. */
  private int[] worstMargins(int leader) {
    int[] margins = new int[approaches.size()];
    int[] ahead = new int[approaches.size()];
    for (int rule = 0; rule < rules.size(); rule++) {
      if (outcomes[rule] == Outcome.FALSE || rules.get(rule).supports().isEmpty()) {
        continue;
      }
      difference(rules.get(rule), leader, ahead);
      boolean fires = outcomes[rule] == Outcome.TRUE;
      for (int rival = 0; rival < margins.length; rival++) {
        margins[rival] += fires ? ahead[rival] : Math.min(0, ahead[rival]);
      }
    }
    return margins;
  }

  private static void difference(CompiledRule rule, int leader, int[] ahead) {
    int own = 0;
    for (CompiledRule.Points given : rule.supports()) {
      own += given.approach() == leader ? given.points() : 0;
    }
    Arrays.fill(ahead, own);
    for (CompiledRule.Points given : rule.supports()) {
      ahead[given.approach()] -= given.points();
    }
  }
}
