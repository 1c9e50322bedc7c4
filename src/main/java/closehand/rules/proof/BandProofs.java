package closehand.rules.proof;

import closehand.bank.Bank;
import closehand.bank.Rule;
import closehand.rules.Reading;
import closehand.rules.Search;
import closehand.rules.proof.Advisory.Kind;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Bands: rules whose ids differ only in their last letter, made out for the same side or digit,
 * that have an effect on the same approach, caution or part of the body, each looked at by itself,
 * and compare the same number.
 */
final class BandProofs {
  private final Bank bank;
  private final Search search;
  private final Reading reading;
  private final Firing firing;

  BandProofs(Bank bank, Search search, Reading reading, Firing firing) {
    this.bank = bank;
    this.search = search;
    this.reading = reading;
    this.firing = firing;
  }

  void bands(List<Advisory> found) {
    Map<String, List<Integer>> byTarget = new LinkedHashMap<>();
    for (int i = 0; i < bank.rules().size(); i++) {
      Rule rule = bank.rules().get(i);
      if (rule.id().matches(".*[0-9][a-z]") && !firing.isDead(i)) {
        String stem = rule.id().substring(0, rule.id().length() - 1) + " " + rule.instance() + " ";
        for (String target : targets(rule)) {
          byTarget.computeIfAbsent(stem + target, f -> new ArrayList<>()).add(i);
        }
      }
    }
    Set<List<Integer>> families = new LinkedHashSet<>(byTarget.values());
    Set<List<Integer>> overlapping = new LinkedHashSet<>();
    families.stream().filter(f -> f.size() > 1).forEach(f -> family(f, overlapping, found));
  }

  /** What a rule has effects on, without how strong they are and on what use of a body part. */
  private static Set<String> targets(Rule rule) {
    Set<String> targets = new LinkedHashSet<>();
    for (Saying one : Saying.of(rule)) {
      switch (one.sort()) {
        case POINTS, CAUTION -> targets.add(one.sort() + " " + one.name());
        case EFFORT -> targets.add(one.sort() + " " + one.name().split(" ", 2)[0]);
        default -> {}
      }
    }
    return targets;
  }

  private void family(List<Integer> rules, Set<List<Integer>> overlapping, List<Advisory> found) {
    Map<String, Long> common = new LinkedHashMap<>(reading.numbersOf(rules.get(0)));
    rules.forEach(r -> common.keySet().retainAll(reading.numbersOf(r).keySet()));
    if (!common.isEmpty()) {
      overlaps(rules, overlapping, found);
      common.forEach((number, cells) -> gaps(rules, number, cells, found));
    }
  }

  private void overlaps(List<Integer> rules, Set<List<Integer>> overlapping, List<Advisory> found) {
    for (int i = 0; i < rules.size(); i++) {
      for (int j = i + 1; j < rules.size(); j++) {
        List<Integer> pair = List.of(rules.get(i), rules.get(j));
        List<Search.Wanted> wanted = pair.stream().map(Firing::fires).toList();
        Search.Found both = search.find(wanted);
        if (!(both instanceof Search.Found.None) && overlapping.add(pair)) {
          found.add(
              advisory(Kind.BAND_OVERLAP, pair, List.of(), both)
                  .shownBy(firing.shown(wanted, both)));
        }
      }
    }
  }

  private Advisory advisory(
      Kind kind, List<Integer> rules, List<String> details, Search.Found shown) {
    return Advisory.searched(
        kind,
        rules.stream().map(r -> bank.rules().get(r).key()).toList(),
        details,
        shown,
        bank.rules().get(rules.get(0)).where());
  }

  /** Cells between covered ones in which no band fires, whatever else is answered. */
  private void gaps(List<Integer> rules, String number, long cells, List<Advisory> found) {
    List<Long> each = new ArrayList<>();
    for (long rest = cells; rest != 0; rest &= rest - 1) {
      each.add(Long.lowestOneBit(rest));
    }
    int last = -1;
    for (int i = 0; i < each.size(); i++) {
      if (covers(rules, number, each.get(i))) {
        for (int gap = last + 1; last >= 0 && gap < i; gap++) {
          gap(rules, number, each.get(gap), found);
        }
        last = i;
      }
    }
  }

  /** A cell that no answers reach is no gap. */
  private void gap(List<Integer> rules, String number, long cell, List<Advisory> found) {
    List<Search.Wanted> wanted =
        List.of(new Search.Wanted(new Search.Goal.InCells(number, cell), true));
    Search.Found there = search.find(wanted);
    if (!(there instanceof Search.Found.None)) {
      found.add(
          advisory(Kind.BAND_GAP, rules, List.of(number), there)
              .shownBy(firing.shown(wanted, there)));
    }
  }

  private boolean covers(List<Integer> rules, String number, long cell) {
    for (int rule : rules) {
      Search.Found found =
          search.find(
              List.of(
                  new Search.Wanted(new Search.Goal.InCells(number, cell), true),
                  Firing.fires(rule)));
      if (!(found instanceof Search.Found.None)) {
        return true;
      }
    }
    return false;
  }
}
