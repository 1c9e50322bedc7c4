package closehand.rules;

import closehand.bank.CautionClass;
import java.util.List;

/** Points and exclusions of every approach, summed over what came of the rules. */
final class Tally {
  /** An approach with so many points is suggested. */
  static final int SUGGESTED_FROM = 1;

  private static final int STRONG_FROM = 2;

  private final int[] points;
  private final int[] lowest;
  private final int[] highest;
  private final boolean[] ruledOut;
  private final boolean[] mayBeRuledOut;
  private boolean partStopped;

  Tally(int approaches, List<CompiledRule> rules, Outcome[] outcomes) {
    points = new int[approaches];
    lowest = new int[approaches];
    highest = new int[approaches];
    ruledOut = new boolean[approaches];
    mayBeRuledOut = new boolean[approaches];
    for (int i = 0; i < outcomes.length; i++) {
      if (outcomes[i] != Outcome.FALSE) {
        add(rules.get(i), outcomes[i] == Outcome.TRUE);
      }
    }
  }

  private void add(CompiledRule rule, boolean fires) {
    for (int i = 0; i < rule.supports().size(); i++) {
      CompiledRule.Points given = rule.supports().get(i);
      int approach = given.approach();
      points[approach] += fires ? given.points() : 0;
      lowest[approach] += fires ? given.points() : Math.min(0, given.points());
      highest[approach] += fires ? given.points() : Math.max(0, given.points());
    }
    for (int approach : rule.excludes()) {
      (fires ? ruledOut : mayBeRuledOut)[approach] = true;
    }
    partStopped |= fires && stopsPart(rule);
  }

  private static boolean stopsPart(CompiledRule rule) {
    return rule.stops()
        && rule.rule().effects().cautions().stream()
            .anyMatch(c -> c.cautionClass() == CautionClass.STOP_PART);
  }

  /** Where an approach stands. While a part of the body is stopped, an open exclusion holds it. */
  Standing.Status status(int approach) {
    if (ruledOut[approach]) {
      return Standing.Status.RULED_OUT;
    }
    boolean held = partStopped && mayBeRuledOut[approach];
    if (points[approach] >= SUGGESTED_FROM && !held) {
      return points[approach] >= STRONG_FROM
          ? Standing.Status.STRONG
          : Standing.Status.WORTH_TRYING;
    }
    return highest[approach] >= SUGGESTED_FROM
        ? Standing.Status.UNDECIDED
        : Standing.Status.NOT_SUGGESTED;
  }

  /** Points over the rules that fire. */
  int points(int approach) {
    return points[approach];
  }

  /** The fewest points the open rules allow. */
  int lowest(int approach) {
    return lowest[approach];
  }

  /** The most points the open rules allow. */
  int highest(int approach) {
    return highest[approach];
  }

  /** Whether an open rule could rule it out. */
  boolean mayBeRuledOut(int approach) {
    return mayBeRuledOut[approach];
  }

  /** Whether it could fall below what is suggested. */
  boolean mayFallOut(int approach) {
    return lowest[approach] < SUGGESTED_FROM || mayBeRuledOut[approach];
  }

  /** Whether a stop on a part of the body stands. */
  boolean partStopped() {
    return partStopped;
  }
}
