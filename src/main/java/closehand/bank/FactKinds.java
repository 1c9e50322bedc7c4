package closehand.bank;

import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;

/**
 * What kind of value stands behind every name a condition may use: asked facts, terms, the games'
 * facts and the list of cautions a clinician has lowered.
 */
final class FactKinds {
  /** The stops a clinician has lowered: a fact that nobody asks. */
  static final String CLEARED = "cleared";

  private static final String FIRST_SLOT = "games.1.";

  private final Map<String, FactType> facts = new LinkedHashMap<>();
  private final Map<String, Term> terms = new LinkedHashMap<>();
  private final List<String> cautions;

  FactKinds(Bank bank) {
    for (Field field : bank.questionnaire().fieldsByFact().values()) {
      facts.put(field.fact(), field.type());
      if (field.fact().startsWith(FIRST_SLOT)) {
        facts.put("game." + field.fact().substring(FIRST_SLOT.length()), field.type());
      }
    }
    bank.terms().forEach(term -> terms.putIfAbsent(term.id(), term));
    cautions = bank.cautions().stream().map(Caution::code).toList();
  }

  /** The kind of an asked fact. */
  Optional<FactType> fact(String name) {
    return Optional.ofNullable(facts.get(name));
  }

  Optional<Term> term(String name) {
    return Optional.ofNullable(terms.get(name));
  }

  List<String> cautions() {
    return cautions;
  }

  boolean known(String name) {
    return facts.containsKey(name) || terms.containsKey(name) || name.equals(CLEARED);
  }

  Collection<String> names() {
    Collection<String> names = new TreeSet<>(facts.keySet());
    names.addAll(terms.keySet());
    names.add(CLEARED);
    return names;
  }

  /** The numbers a fact or computed term can take, if it is one. */
  Optional<double[]> range(String name) {
    FactType type = facts.get(name);
    if (type instanceof FactType.Amount amount) {
      return Optional.of(new double[] {amount.minimum(), amount.maximum()});
    }
    if (type instanceof FactType.OneOf one && one.isScale()) {
      double low = one.options().stream().mapToDouble(o -> o.ordinal().orElse(0)).min().orElse(0);
      double high = one.options().stream().mapToDouble(o -> o.ordinal().orElse(0)).max().orElse(0);
      return Optional.of(new double[] {low, high});
    }
    if (terms.get(name) instanceof Term.Computed computed) {
      return range(computed, 0);
    }
    return Optional.empty();
  }

  private Optional<double[]> range(Term.Computed computed, int depth) {
    if (computed.computation() == Term.Computation.COUNT && computed.of().size() == 1) {
      FactType type = facts.get(computed.of().get(0));
      return type instanceof FactType.SeveralOf several
          ? Optional.of(
              new double[] {0, several.options().stream().filter(o -> !o.exclusive()).count()})
          : Optional.empty();
    }
    double low = Double.POSITIVE_INFINITY;
    double high = Double.NEGATIVE_INFINITY;
    for (String part : computed.of()) {
      Optional<double[]> range =
          depth < 8 && terms.get(part) instanceof Term.Computed inner
              ? range(inner, depth + 1)
              : range(part);
      if (range.isEmpty()) {
        return Optional.empty();
      }
      low = Math.min(low, range.get()[0]);
      high = Math.max(high, range.get()[1]);
    }
    return Optional.of(
        computed.computation() == Term.Computation.DIFFERENCE
            ? new double[] {low - high, high - low}
            : new double[] {low, high});
  }
}
