package closehand.rules.proof;

import closehand.interview.Answers;
import closehand.rules.Reading;
import closehand.rules.Search;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Which rules can fire with which others and without them. */
final class Firing {
  private final Search search;
  private final Reading reading;
  private final Map<Integer, Set<String>> facts = new HashMap<>();
  private final Map<List<Integer>, Search.Found> without = new HashMap<>();
  private final Set<Integer> dead = new HashSet<>();

  Firing(Search search, Reading reading) {
    this.search = search;
    this.reading = reading;
  }

  /** Answers under which a rule fires, or not. */
  Search.Found alone(int rule, boolean fires) {
    Search.Found found = search.find(new Search.Goal.Fires(rule), fires);
    if (fires && !(found instanceof Search.Found.Witness)) {
      dead.add(rule);
    }
    return found;
  }

  /** Whether a rule was found never to fire, or nobody knows. */
  boolean isDead(int rule) {
    return dead.contains(rule);
  }

  /** Rules that read nothing in common never follow from one another, but for what always fires. */
  boolean share(int one, int other) {
    return facts(other).isEmpty() || !Collections.disjoint(facts(one), facts(other));
  }

  private Set<String> facts(int rule) {
    return facts.computeIfAbsent(rule, reading::factsBehind);
  }

  /** Answers under which one rule fires and another does not. */
  Search.Found without(int firing, int other) {
    return without.computeIfAbsent(
        List.of(firing, other),
        pair -> search.find(List.of(fires(firing), doesNot(new Search.Goal.Fires(other)))));
  }

  /** Answers under which a rule fires and this does not hold. */
  Search.Found without(int firing, Search.Goal goal) {
    return search.find(List.of(fires(firing), doesNot(goal)));
  }

  /** As few answers as make a rule fire and something else hold; none where there are none. */
  Optional<Answers> together(int rule, Search.Goal goal) {
    List<Search.Wanted> wanted = List.of(fires(rule), new Search.Wanted(goal, true));
    return shown(wanted, search.find(wanted));
  }

  /** As few of the answers found as still show it. */
  Optional<Answers> shown(List<Search.Wanted> wanted, Search.Found found) {
    return found instanceof Search.Found.Witness witness
        ? Optional.of(search.fewest(witness.answers(), wanted))
        : Optional.empty();
  }

  static Search.Wanted fires(int rule) {
    return new Search.Wanted(new Search.Goal.Fires(rule), true);
  }

  private static Search.Wanted doesNot(Search.Goal goal) {
    return new Search.Wanted(goal, false);
  }
}
