package closehand.rules.proof;

import closehand.bank.Rule;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/**
 * How a case moves from one bank to another.
 *
 * @param before what the old bank makes of it
 * @param after what the new bank makes of it
 */
public record Move(Standpoint before, Standpoint after) {
  /** In what a case moved. */
  public enum In {
    LEADER,
    /** What is suggested, or in which order, apart from what leads. */
    ORDER,
    FIRMNESS,
    EXCLUSIONS,
    CAUTIONS,
    STOPS
  }

  /** In what it moved; empty if in nothing. */
  public Set<In> in() {
    Set<In> moved = EnumSet.noneOf(In.class);
    if (!before.verdict().sameLead(after.verdict())) {
      moved.add(In.LEADER);
    }
    if (before.verdict().sameLead(after.verdict())
        && !before.suggested().equals(after.suggested())) {
      moved.add(In.ORDER);
    }
    if (before.verdict().firm() != after.verdict().firm()) {
      moved.add(In.FIRMNESS);
    }
    if (!before.ruledOut().equals(after.ruledOut())) {
      moved.add(In.EXCLUSIONS);
    }
    if (!before.cautions().equals(after.cautions())) {
      moved.add(In.CAUTIONS);
    }
    if (!before.stops().equals(after.stops())) {
      moved.add(In.STOPS);
    }
    return moved;
  }

  /** What the second set has that the first has not, in its order. */
  public static List<String> added(Set<String> first, Set<String> second) {
    Set<String> added = new LinkedHashSet<>(second);
    added.removeAll(first);
    return new ArrayList<>(added);
  }

  /**
   * The rules that fire under one bank only, or fire under both with other consequences; where
   * there are none, the same of rules that wait for answers.
   */
  public List<String> byRules() {
    List<String> firing = differing(before.firing(), after.firing());
    return firing.isEmpty() ? differing(before.open(), after.open()) : firing;
  }

  /**
   * Whether something moved though no rule did: equal points are told apart in another way, by
   * cost, by setting up or by the order of the approaches.
   */
  public boolean byTies() {
    return (in().contains(In.LEADER) || in().contains(In.ORDER) || in().contains(In.FIRMNESS))
        && byRules().isEmpty();
  }

  private static List<String> differing(List<Rule> before, List<Rule> after) {
    Map<String, Rule.Effects> old = byKey(before);
    Map<String, Rule.Effects> now = byKey(after);
    Set<String> keys = new TreeSet<>();
    compare(old, now, keys);
    compare(now, old, keys);
    return List.copyOf(keys);
  }

  private static Map<String, Rule.Effects> byKey(List<Rule> rules) {
    Map<String, Rule.Effects> byKey = new LinkedHashMap<>();
    rules.forEach(r -> byKey.put(r.key(), r.effects()));
    return byKey;
  }

  private static void compare(
      Map<String, Rule.Effects> one, Map<String, Rule.Effects> other, Set<String> keys) {
    one.forEach(
        (key, effects) -> {
          Rule.Effects there = other.get(key);
          if (there == null || !words(effects).equals(words(there))) {
            keys.add(key);
          }
        });
  }

  /** What follows from a rule, without where it stands in its file. */
  private static List<Object> words(Rule.Effects effects) {
    return List.of(
        effects.exclude().stream().map(Rule.Located::name).toList(),
        effects.support().stream().map(s -> s.approach() + s.points()).toList(),
        effects.cautions().stream().map(c -> c.code() + c.cautionClass()).toList());
  }
}
