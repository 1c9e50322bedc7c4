package closehand.rules.proof;

import closehand.bank.Approach;
import closehand.bank.Bank;
import closehand.bank.Rule;
import closehand.bank.Where;
import closehand.rules.Search;
import closehand.rules.proof.Advisory.Kind;
import closehand.rules.proof.Advisory.Proof;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Points that can never count, and whether everything can be ruled out at once. */
final class ApproachProofs {
  private static final String SETTINGS = "settings";

  private final Bank bank;
  private final Search search;
  private final RuleProofs rules;
  private final Map<String, List<Integer>> excluders = new LinkedHashMap<>();

  ApproachProofs(Bank bank, Search search, RuleProofs rules) {
    this.bank = bank;
    this.search = search;
    this.rules = rules;
    for (int i = 0; i < bank.rules().size(); i++) {
      for (Rule.Located excluded : bank.rules().get(i).effects().exclude()) {
        excluders.computeIfAbsent(excluded.name(), e -> new ArrayList<>()).add(i);
      }
    }
  }

  void approaches(List<Advisory> found) {
    for (int i = 0; i < bank.rules().size(); i++) {
      for (Rule.Support given : bank.rules().get(i).effects().support()) {
        if (given.points() > 0 && !rules.isDead(i)) {
          counts(i, given, found);
        }
      }
    }
    allExcluded(found);
  }

  private void counts(int rule, Rule.Support given, List<Advisory> found) {
    List<Search.Wanted> wanted = new ArrayList<>();
    wanted.add(new Search.Wanted(new Search.Goal.Fires(rule), true));
    for (int excluder : excluders.getOrDefault(given.approach(), List.of())) {
      wanted.add(new Search.Wanted(new Search.Goal.Fires(excluder), false));
    }
    Search.Found counts = search.find(wanted);
    if (!(counts instanceof Search.Found.Witness)) {
      found.add(
          new Advisory(
              Kind.POINTS_NEVER_COUNT,
              List.of(bank.rules().get(rule).key()),
              List.of(given.approach()),
              Optional.empty(),
              RuleProofs.proof(counts),
              given.where()));
    }
  }

  private void allExcluded(List<Advisory> found) {
    List<Search.Wanted> wanted = new ArrayList<>();
    for (Approach approach : bank.approaches()) {
      if (!approach.family().equals(SETTINGS)) {
        List<Integer> out = excluders.getOrDefault(approach.id(), List.of());
        if (out.isEmpty()) {
          return;
        }
        wanted.add(new Search.Wanted(new Search.Goal.Fires(out), true));
      }
    }
    Search.Found all = search.find(wanted);
    if (all instanceof Search.Found.Witness witness) {
      found.add(advisory(Optional.of(witness), Proof.WITNESS));
    } else if (all instanceof Search.Found.GivenUp) {
      found.add(advisory(Optional.empty(), Proof.NOT_PROVEN));
    }
  }

  private static Advisory advisory(Optional<Search.Found.Witness> witness, Proof proof) {
    return new Advisory(
        Kind.ALL_EXCLUDED,
        List.of(),
        List.of(),
        witness.map(Search.Found.Witness::answers),
        proof,
        Where.file("rules"));
  }
}
