package closehand.rules.proof;

import closehand.bank.Bank;
import closehand.bank.Condition;
import closehand.bank.Rule;
import closehand.rules.Search;
import closehand.rules.proof.Advisory.Kind;
import closehand.rules.proof.Advisory.Proof;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Whether each rule alone can fire and can fail to. */
final class RuleProofs {
  private final Bank bank;
  private final Search search;
  private final Set<Integer> never = new HashSet<>();

  RuleProofs(Bank bank, Search search) {
    this.bank = bank;
    this.search = search;
  }

  /** Rules that never or always fire. */
  void alone(List<Advisory> found) {
    for (int i = 0; i < bank.rules().size(); i++) {
      Rule rule = bank.rules().get(i);
      Search.Found fires = search.find(new Search.Goal.Fires(i), true);
      if (!(fires instanceof Search.Found.Witness)) {
        never.add(i);
        found.add(advisory(Kind.NEVER_FIRES, rule, fires));
      }
      boolean meant = rule.when() instanceof Condition.Always && rule.unless().isEmpty();
      Search.Found not = search.find(new Search.Goal.Fires(i), false);
      if (!meant && !(not instanceof Search.Found.Witness)) {
        found.add(advisory(Kind.ALWAYS_FIRES, rule, not));
      }
    }
  }

  private static Advisory advisory(Kind kind, Rule rule, Search.Found found) {
    return new Advisory(
        kind, List.of(rule.key()), List.of(), Optional.empty(), proof(found), rule.where());
  }

  /** How sure it is that a search found nothing. */
  static Proof proof(Search.Found found) {
    return found instanceof Search.Found.None ? Proof.EXHAUSTED : Proof.NOT_PROVEN;
  }

  /** Whether a rule never fires, or nobody knows. */
  boolean isDead(int rule) {
    return never.contains(rule);
  }

  /** Answers under which one rule fires and another does not. */
  Search.Found without(int firing, int other) {
    return search.find(
        List.of(
            new Search.Wanted(new Search.Goal.Fires(firing), true),
            new Search.Wanted(new Search.Goal.Fires(other), false)));
  }
}
