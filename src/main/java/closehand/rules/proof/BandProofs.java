package closehand.rules.proof;

import closehand.bank.Bank;
import closehand.bank.Rule;
import closehand.interview.Answers;
import closehand.rules.Reading;
import closehand.rules.Search;
import closehand.rules.proof.Advisory.Kind;
import closehand.rules.proof.Advisory.Proof;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Bands: rules whose ids differ only in their last letter, made out for the same side or digit,
 * with effects on the same things, that compare the same number.
 */
final class BandProofs {
  private final Bank bank;
  private final Search search;
  private final Reading reading;

  BandProofs(Bank bank, Search search, Reading reading) {
    this.bank = bank;
    this.search = search;
    this.reading = reading;
  }

  void bands(List<Advisory> found) {
    Map<String, List<Integer>> families = new LinkedHashMap<>();
    for (int i = 0; i < bank.rules().size(); i++) {
      Rule rule = bank.rules().get(i);
      if (rule.id().matches(".*[0-9][a-z]")) {
        String stem = rule.id().substring(0, rule.id().length() - 1);
        String family = stem + " " + rule.instance() + " " + targets(rule);
        families.computeIfAbsent(family, f -> new ArrayList<>()).add(i);
      }
    }
    families.values().stream().filter(f -> f.size() > 1).forEach(f -> family(f, found));
  }

  /** What the rule has effects on, without how strong they are. */
  private static Set<String> targets(Rule rule) {
    Set<String> targets = new LinkedHashSet<>();
    rule.effects().support().forEach(s -> targets.add(s.approach()));
    rule.effects().cautions().forEach(c -> targets.add(c.code()));
    rule.effects().effort().forEach(e -> targets.add(e.effectors() + "" + e.inputs()));
    return targets;
  }

  private void family(List<Integer> rules, List<Advisory> found) {
    Map<String, Long> common = new LinkedHashMap<>(reading.numbersOf(rules.get(0)));
    rules.forEach(r -> common.keySet().retainAll(reading.numbersOf(r).keySet()));
    if (!common.isEmpty()) {
      overlaps(rules, found);
      common.forEach((number, cells) -> gaps(rules, number, cells, found));
    }
  }

  private void overlaps(List<Integer> rules, List<Advisory> found) {
    for (int i = 0; i < rules.size(); i++) {
      for (int j = i + 1; j < rules.size(); j++) {
        Search.Found both =
            search.find(
                List.of(
                    new Search.Wanted(new Search.Goal.Fires(rules.get(i)), true),
                    new Search.Wanted(new Search.Goal.Fires(rules.get(j)), true)));
        if (!(both instanceof Search.Found.None)) {
          List<Integer> pair = List.of(rules.get(i), rules.get(j));
          found.add(advisory(Kind.BAND_OVERLAP, pair, List.of(), both));
        }
      }
    }
  }

  private Advisory advisory(
      Kind kind, List<Integer> rules, List<String> details, Search.Found shown) {
    Optional<Answers> witness =
        shown instanceof Search.Found.Witness w ? Optional.of(w.answers()) : Optional.empty();
    return new Advisory(
        kind,
        rules.stream().map(r -> bank.rules().get(r).key()).toList(),
        details,
        witness,
        witness.isPresent() ? Proof.WITNESS : Proof.NOT_PROVEN,
        bank.rules().get(rules.get(0)).where());
  }

  /** A cell between covered ones in which no band fires, whatever else is answered. */
  private void gaps(List<Integer> rules, String number, long cells, List<Advisory> found) {
    List<Long> each = new ArrayList<>();
    for (long rest = cells; rest != 0; rest &= rest - 1) {
      each.add(Long.lowestOneBit(rest));
    }
    int last = -1;
    for (int i = 0; i < each.size(); i++) {
      if (covers(rules, number, each.get(i))) {
        for (int gap = last + 1; last >= 0 && gap < i; gap++) {
          Search.Found there = search.find(new Search.Goal.InCells(number, each.get(gap)), true);
          found.add(advisory(Kind.BAND_GAP, rules, List.of(number), there));
        }
        last = i;
      }
    }
  }

  private boolean covers(List<Integer> rules, String number, long cell) {
    for (int rule : rules) {
      Search.Found found =
          search.find(
              List.of(
                  new Search.Wanted(new Search.Goal.InCells(number, cell), true),
                  new Search.Wanted(new Search.Goal.Fires(rule), true)));
      if (!(found instanceof Search.Found.None)) {
        return true;
      }
    }
    return false;
  }
}
