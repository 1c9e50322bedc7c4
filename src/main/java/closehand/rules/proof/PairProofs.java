package closehand.rules.proof;

import closehand.bank.Bank;
import closehand.bank.Rule;
import closehand.rules.Search;
import closehand.rules.proof.Advisory.Kind;
import java.util.ArrayList;
import java.util.List;

/**
 * Rules that say the same: a rule whose every effect another rule has too whenever the first fires;
 * and, for each approach by itself, the same points given by both then, which count twice. That
 * some of what a rule rules out or warns of is said by another too does no harm and is not looked
 * for.
 */
final class PairProofs {
  private final Bank bank;
  private final Firing firing;
  private final List<List<Saying>> sayings = new ArrayList<>();

  PairProofs(Bank bank, Firing firing) {
    this.bank = bank;
    this.firing = firing;
    bank.rules().forEach(r -> sayings.add(Saying.of(r)));
  }

  void pairs(List<Advisory> found) {
    for (int i = 0; i < bank.rules().size(); i++) {
      for (int j = 0; j < bank.rules().size(); j++) {
        if (i != j && !firing.isDead(i) && !firing.isDead(j)) {
          pair(i, j, found);
        }
      }
    }
  }

  private void pair(int one, int other, List<Advisory> found) {
    boolean whole = isSaid(one, other);
    List<String> twice = whole ? List.of() : countedTwice(one, other);
    if ((!whole && twice.isEmpty()) || !firing.share(one, other)) {
      return;
    }
    Search.Found without = firing.without(one, other);
    if (without instanceof Search.Found.Witness) {
      return;
    }
    boolean twin =
        whole
            && other < one
            && isSaid(other, one)
            && !(firing.without(other, one) instanceof Search.Found.Witness);
    if (!twin) {
      Rule rule = bank.rules().get(one);
      List<String> keys = List.of(rule.key(), bank.rules().get(other).key());
      found.add(
          Advisory.searched(Kind.SAYS_THE_SAME, keys, twice, without, rule.where())
              .shownBy(firing.together(one, new Search.Goal.Fires(other))));
    }
  }

  /** Whether the other rule says everything that the first says. */
  private boolean isSaid(int one, int other) {
    return !sayings.get(one).isEmpty()
        && sayings.get(one).stream()
            .allMatch(s -> sayings.get(other).stream().anyMatch(s::isSaidBy));
  }

  /** The approaches to which both give the same points. */
  private List<String> countedTwice(int one, int other) {
    return sayings.get(one).stream()
        .filter(s -> s.sort() == Saying.Sort.POINTS)
        .filter(s -> sayings.get(other).stream().anyMatch(s::isSaidBy))
        .map(Saying::name)
        .distinct()
        .toList();
  }
}
