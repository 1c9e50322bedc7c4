package closehand.rules;

import closehand.bank.Caution;
import closehand.bank.Rule;
import closehand.bank.TaskKind;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.Set;

/**
 * Which kinds of task must wait, depending on who would run them.
 *
 * <p>Somebody who is no clinician waits while any rule that could hold a task is open: an
 * unanswered safety question is never taken for an all-clear. A clinician can judge what is open,
 * so only rules that fire hold, and not those whose caution speaks of volunteers alone.
 */
public final class Holds {
  private Holds() {}

  /** The kinds of task that must wait. */
  public static Set<TaskKind> of(Advice advice, boolean clinician) {
    Set<String> volunteersOnly = new HashSet<>();
    for (Warning warning : advice.cautions()) {
      Caution caution = warning.caution();
      if (!caution.bindsClinicians()) {
        volunteersOnly.add(caution.code());
      }
    }
    Set<TaskKind> holds = EnumSet.noneOf(TaskKind.class);
    for (Finding finding : advice.findings()) {
      boolean counts =
          finding.outcome() == Outcome.TRUE || (finding.outcome() == Outcome.OPEN && !clinician);
      if (counts && !(clinician && speaksOf(volunteersOnly, finding.rule()))) {
        holds.addAll(of(finding.rule()));
      }
    }
    return holds;
  }

  private static boolean speaksOf(Set<String> codes, Rule rule) {
    return !rule.effects().cautions().isEmpty()
        && rule.effects().cautions().stream().allMatch(c -> codes.contains(c.code()));
  }

  /** The kinds of task a rule holds when it fires. */
  static Set<TaskKind> of(Rule rule) {
    boolean all = rule.effects().cautions().stream().anyMatch(c -> c.cautionClass().withholds());
    Set<TaskKind> holds = all ? EnumSet.allOf(TaskKind.class) : EnumSet.noneOf(TaskKind.class);
    holds.addAll(rule.effects().holds());
    return holds;
  }
}
