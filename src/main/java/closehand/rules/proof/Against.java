package closehand.rules.proof;

import closehand.bank.Bank;
import closehand.bank.Rule;
import closehand.rules.Search;
import closehand.rules.Search.Goal;
import closehand.rules.proof.Advisory.Kind;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Points that can never count, for every approach by itself: whenever the rule that gives them
 * fires, other rules rule the approach out, or take as many points off again. One other rule is
 * asked for first, since that is quick and says most; then all others together, however they take
 * turns.
 */
final class Against {
  private final Bank bank;
  private final Firing firing;
  private final Map<String, List<Integer>> excluders = new LinkedHashMap<>();
  private final Map<String, List<Integer>> takers = new LinkedHashMap<>();

  Against(Bank bank, Firing firing) {
    this.bank = bank;
    this.firing = firing;
    for (int i = 0; i < bank.rules().size(); i++) {
      for (Rule.Located excluded : bank.rules().get(i).effects().exclude()) {
        excluders.computeIfAbsent(excluded.name(), e -> new ArrayList<>()).add(i);
      }
      for (Rule.Support support : bank.rules().get(i).effects().support()) {
        if (support.points() < 0) {
          takers.computeIfAbsent(support.approach(), e -> new ArrayList<>()).add(i);
        }
      }
    }
  }

  /** The rules that rule an approach out. */
  List<Integer> excluders(String approach) {
    return excluders.getOrDefault(approach, List.of());
  }

  void points(List<Advisory> found) {
    for (int i = 0; i < bank.rules().size(); i++) {
      for (Rule.Support given : bank.rules().get(i).effects().support()) {
        if (given.points() > 0 && !firing.isDead(i)) {
          takenOff(i, given, found);
          ruledOut(i, given, found);
        }
      }
    }
  }

  private void ruledOut(int rule, Rule.Support given, List<Advisory> found) {
    List<Integer> out = touching(rule, excluders(given.approach()));
    counts(Kind.POINTS_NEVER_COUNT, rule, given, out, 1, found);
  }

  private void takenOff(int rule, Rule.Support given, List<Advisory> found) {
    List<Integer> weighed = new ArrayList<>();
    for (int taker : touching(rule, takers.getOrDefault(given.approach(), List.of()))) {
      weighed.addAll(Collections.nCopies(points(taker, given.approach()), taker));
    }
    counts(Kind.CONTRADICTS, rule, given, weighed, given.points(), found);
  }

  /** How many points a rule takes off an approach in all; 0 if it gives some. */
  private int points(int taker, String approach) {
    int points =
        bank.rules().get(taker).effects().support().stream()
            .filter(s -> s.approach().equals(approach))
            .mapToInt(Rule.Support::points)
            .sum();
    return Math.max(0, -points);
  }

  private List<Integer> touching(int rule, List<Integer> others) {
    return others.stream()
        .filter(o -> o != rule && !firing.isDead(o) && firing.share(rule, o))
        .toList();
  }

  /** Finds the rules of which enough fire whenever the rule does, one if one is enough. */
  private void counts(
      Kind kind,
      int rule,
      Rule.Support given,
      List<Integer> weighed,
      int enough,
      List<Advisory> found) {
    for (int other : weighed.stream().distinct().toList()) {
      List<Integer> alone = weighed.stream().filter(w -> w == other).toList();
      if (alone.size() >= enough && firing.without(rule, other) instanceof Search.Found.None none) {
        found.add(advisory(kind, rule, given, new Goal.AtLeast(enough, alone), none));
        return;
      }
    }
    if (weighed.size() >= enough) {
      Goal.AtLeast all = new Goal.AtLeast(enough, weighed);
      Search.Found counts = firing.without(rule, all);
      if (!(counts instanceof Search.Found.Witness)) {
        Goal.AtLeast needed = counts instanceof Search.Found.None ? needed(rule, all) : all;
        found.add(advisory(kind, rule, given, needed, counts));
      }
    }
  }

  /** As few of the others as are needed for it. */
  private Goal.AtLeast needed(int rule, Goal.AtLeast all) {
    Goal.AtLeast left = all;
    for (int other : all.rules().stream().distinct().toList()) {
      List<Integer> fewer = left.rules().stream().filter(w -> w != other).toList();
      Goal.AtLeast without = new Goal.AtLeast(all.count(), fewer);
      if (firing.without(rule, without) instanceof Search.Found.None) {
        left = without;
      }
    }
    return left;
  }

  private Advisory advisory(
      Kind kind, int rule, Rule.Support given, Goal.AtLeast others, Search.Found counts) {
    List<Integer> named = new ArrayList<>(List.of(rule));
    named.addAll(others.rules().stream().distinct().toList());
    List<String> keys = named.stream().map(r -> bank.rules().get(r).key()).toList();
    return Advisory.searched(kind, keys, List.of(given.approach()), counts, given.where())
        .shownBy(firing.together(rule, others));
  }
}
