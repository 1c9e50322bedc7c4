package closehand.rules.proof;

import closehand.bank.Bank;
import closehand.bank.Rule;
import closehand.interview.Answers;
import closehand.rules.Reading;
import closehand.rules.Search;
import closehand.rules.proof.Advisory.Kind;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Rules that say the same, and rules that take off again what others give. */
final class PairProofs {
  private final Bank bank;
  private final Search search;
  private final RuleProofs rules;
  private final Map<Integer, Set<String>> facts = new HashMap<>();
  private final Map<Integer, List<Object>> signatures = new HashMap<>();

  PairProofs(Bank bank, Search search, Reading reading, RuleProofs rules) {
    this.bank = bank;
    this.search = search;
    this.rules = rules;
    for (int i = 0; i < bank.rules().size(); i++) {
      facts.put(i, reading.factsBehind(i));
      signatures.put(i, signature(bank.rules().get(i)));
    }
  }

  void pairs(List<Advisory> found) {
    for (int i = 0; i < bank.rules().size(); i++) {
      for (int j = 0; j < bank.rules().size(); j++) {
        if (i != j && !rules.isDead(i) && !rules.isDead(j)) {
          pair(i, j, found);
        }
      }
    }
  }

  private void pair(int firing, int other, List<Advisory> found) {
    Rule one = bank.rules().get(firing);
    Rule two = bank.rules().get(other);
    boolean same = signatures.getOrDefault(firing, List.of()).equals(signatures.get(other));
    Optional<String> against = same ? Optional.empty() : takenOff(one, two);
    if ((!same && against.isEmpty()) || !share(firing, other)) {
      return;
    }
    Search.Found without = rules.without(firing, other);
    if (without instanceof Search.Found.Witness) {
      return;
    }
    boolean twin =
        same && other < firing && !(rules.without(other, firing) instanceof Search.Found.Witness);
    if (!twin) {
      found.add(
          new Advisory(
              same ? Kind.SAYS_THE_SAME : Kind.CONTRADICTS,
              List.of(one.key(), two.key()),
              against.map(List::of).orElse(List.of()),
              both(firing, other),
              RuleProofs.proof(without),
              one.where()));
    }
  }

  /** Rules that read nothing in common can never follow from one another. */
  private boolean share(int one, int other) {
    return !Collections.disjoint(
        facts.getOrDefault(one, Set.of()), facts.getOrDefault(other, Set.of()));
  }

  /** Answers under which both fire. */
  private Optional<Answers> both(int one, int other) {
    Search.Found found =
        search.find(
            List.of(
                new Search.Wanted(new Search.Goal.Fires(one), true),
                new Search.Wanted(new Search.Goal.Fires(other), true)));
    return found instanceof Search.Found.Witness witness
        ? Optional.of(witness.answers())
        : Optional.empty();
  }

  /** What follows from a rule, without where it stands. */
  private static List<Object> signature(Rule rule) {
    Rule.Effects effects = rule.effects();
    return List.of(
        new HashSet<>(effects.exclude().stream().map(Rule.Located::name).toList()),
        new HashSet<>(
            effects.support().stream().map(s -> s.approach() + " " + s.points()).toList()),
        new HashSet<>(
            effects.cautions().stream().map(c -> c.code() + " " + c.cautionClass()).toList()),
        new HashSet<>(effects.restingEffectors()),
        new HashSet<>(effects.effort()),
        new HashSet<>(effects.advice()),
        new HashSet<>(effects.holds()));
  }

  /** The approach for which the second rule takes off at least what the first gives. */
  private static Optional<String> takenOff(Rule one, Rule two) {
    for (Rule.Support given : one.effects().support()) {
      for (Rule.Support taken : two.effects().support()) {
        if (given.approach().equals(taken.approach())
            && given.points() > 0
            && given.points() + taken.points() <= 0) {
          return Optional.of(given.approach());
        }
      }
    }
    return Optional.empty();
  }
}
