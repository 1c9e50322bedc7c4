package closehand.rules;

import closehand.bank.Approach;
import java.util.ArrayList;
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

  /** The places of the open rules that can still change which approach leads, in rule order. */
  List<Integer> overturning() {
    for (int approach : ranking.ordered(tally)) {
      if (tally.status(approach).suggested() && canLead(approach)) {
        return against(approach);
      }
    }
    List<Integer> found = new ArrayList<>();
    for (int rule = 0; rule < rules.size(); rule++) {
      if (outcomes[rule] == Outcome.OPEN
          && rules.get(rule).supports().stream().anyMatch(this::bringsIn)) {
        found.add(rule);
      }
    }
    return found;
  }

  /** Whether these points could bring an approach in that is not suggested yet. */
  private boolean bringsIn(CompiledRule.Points given) {
    return given.points() > 0
        && canLead(given.approach())
        && tally.status(given.approach()) == Standing.Status.UNDECIDED;
  }

  /**
   * The open rules that could rule a leader out, take it below a suggestion or put a rival ahead.
   */
  private List<Integer> against(int leader) {
    int[] margins = worstMargins(leader);
    boolean mayFall = tally.lowest(leader) < Tally.SUGGESTED_FROM;
    List<Integer> found = new ArrayList<>();
    int[] ahead = new int[approaches.size()];
    for (int rule = 0; rule < rules.size(); rule++) {
      if (outcomes[rule] != Outcome.OPEN) {
        continue;
      }
      CompiledRule open = rules.get(rule);
      boolean turns = open.excludes().contains(leader);
      difference(open, leader, ahead);
      for (int rival = 0; rival < margins.length; rival++) {
        turns |= ahead[rival] < 0 && overtakes(rival, leader, margins[rival]);
      }
      turns |=
          mayFall
              && open.supports().stream().anyMatch(g -> g.approach() == leader && g.points() < 0);
      if (turns) {
        found.add(rule);
      }
    }
    return found;
  }

  private boolean overtakes(int rival, int leader, int margin) {
    int needed = ranking.place(leader) < ranking.place(rival) ? 0 : 1;
    return rival != leader
        && canLead(rival)
        && tally.status(rival) != Standing.Status.RULED_OUT
        && margin < needed;
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
      if (overtakes(rival, leader, margins[rival])) {
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
