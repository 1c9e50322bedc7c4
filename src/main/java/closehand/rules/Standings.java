package closehand.rules;

import java.util.ArrayList;
import java.util.List;

/** Says how every approach stands, with the rules behind it. */
final class Standings {
  private Standings() {}

  /** The rules that touch one approach, by what they do to it. */
  private record Touching(
      List<Finding> inFavour,
      List<Finding> against,
      List<Finding> ruledOutBy,
      List<Finding> mayBeRuledOutBy,
      List<Integer> open) {
    Touching() {
      this(
          new ArrayList<>(),
          new ArrayList<>(),
          new ArrayList<>(),
          new ArrayList<>(),
          new ArrayList<>());
    }
  }

  /** Every approach in the order of an advice. */
  static List<Standing> of(Reckoning reckoning, Ranking ranking) {
    int count = reckoning.program().bank().approaches().size();
    List<Touching> touching = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      touching.add(new Touching());
    }
    for (int rule = 0; rule < reckoning.findings().size(); rule++) {
      if (reckoning.outcome(rule) != Outcome.FALSE) {
        add(rule, reckoning, touching);
      }
    }
    List<Standing> standings = new ArrayList<>();
    for (int approach : ranking.ordered(reckoning.tally())) {
      standings.add(standing(approach, touching.get(approach), reckoning));
    }
    return standings;
  }

  private static void add(int index, Reckoning reckoning, List<Touching> touching) {
    CompiledRule rule = reckoning.program().rules().get(index);
    Finding finding = reckoning.finding(index);
    boolean fires = finding.outcome() == Outcome.TRUE;
    for (CompiledRule.Points given : rule.supports()) {
      Touching approach = touching.get(given.approach());
      if (fires) {
        (given.points() > 0 ? approach.inFavour() : approach.against()).add(finding);
      } else {
        approach.open().add(index);
      }
    }
    for (int excluded : rule.excludes()) {
      Touching approach = touching.get(excluded);
      (fires ? approach.ruledOutBy() : approach.mayBeRuledOutBy()).add(finding);
      if (!fires) {
        approach.open().add(index);
      }
    }
  }

  private static Standing standing(int approach, Touching rules, Reckoning reckoning) {
    Tally tally = reckoning.tally();
    Standing.Status status = tally.status(approach);
    boolean settled = status == Standing.Status.RULED_OUT;
    return new Standing(
        reckoning.program().bank().approaches().get(approach),
        status,
        tally.points(approach),
        tally.lowest(approach),
        tally.highest(approach),
        rules.inFavour(),
        rules.against(),
        rules.ruledOutBy(),
        rules.mayBeRuledOutBy(),
        settled || rules.open().isEmpty()
            ? List.of()
            : new FactNames(() -> reckoning.waitsOf(rules.open())));
  }
}
