package closehand.rules.proof;

import closehand.bank.Bank;
import closehand.bank.Condition;
import closehand.bank.Rule;
import closehand.rules.Search;
import closehand.rules.proof.Advisory.Kind;
import java.util.List;

/** Whether each rule alone can fire and can fail to. */
final class RuleProofs {
  private final Bank bank;
  private final Firing firing;

  RuleProofs(Bank bank, Firing firing) {
    this.bank = bank;
    this.firing = firing;
  }

  /** Rules that never or always fire. */
  void alone(List<Advisory> found) {
    for (int i = 0; i < bank.rules().size(); i++) {
      Rule rule = bank.rules().get(i);
      Search.Found fires = firing.alone(i, true);
      if (!(fires instanceof Search.Found.Witness)) {
        found.add(advisory(Kind.NEVER_FIRES, rule, fires));
      }
      boolean meant = rule.when() instanceof Condition.Always && rule.unless().isEmpty();
      Search.Found not = firing.alone(i, false);
      if (!meant && !(not instanceof Search.Found.Witness)) {
        found.add(advisory(Kind.ALWAYS_FIRES, rule, not));
      }
    }
  }

  private static Advisory advisory(Kind kind, Rule rule, Search.Found found) {
    return Advisory.searched(kind, List.of(rule.key()), List.of(), found, rule.where());
  }
}
