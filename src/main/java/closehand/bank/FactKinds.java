package closehand.bank;

import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/**
 * What kind of value stands behind every name a condition may use: asked facts, terms, the games'
 * facts and the list of cautions a clinician has lowered.
 */
final class FactKinds {
  /** The stops a clinician has lowered: a fact that nobody asks. */
  static final String CLEARED = "cleared";

  /** How the facts about a game begin inside {@code anyGame} and {@code everyGame}. */
  static final String GAME = "game.";

  private static final String FIRST_SLOT = "games.1.";

  private final Map<String, FactType> facts = new LinkedHashMap<>();
  private final Map<String, Term> terms = new LinkedHashMap<>();
  private final Map<String, Optional<Span>> ranges = new HashMap<>();
  private final Set<String> doubtful = new HashSet<>();
  private final List<String> cautions;
  private final boolean complete;
  private final boolean knowsCautions;

  FactKinds(Bank bank, Doubt doubt) {
    for (Field field : bank.questionnaire().fieldsByFact().values()) {
      fact(field, field.fact(), doubt);
      if (field.fact().startsWith(FIRST_SLOT)) {
        fact(field, GAME + field.fact().substring(FIRST_SLOT.length()), doubt);
      }
    }
    for (Term term : bank.terms()) {
      terms.putIfAbsent(term.id(), term);
      if (doubt.about(term.where())) {
        doubtful.add(term.id());
      }
    }
    cautions = bank.cautions().stream().map(Caution::code).toList();
    complete = !doubt.lacks(Catalogue.FACTS) && !doubt.lacks(Catalogue.TERMS);
    knowsCautions = !doubt.lacks(Catalogue.CAUTIONS);
  }

  /** Names that stand for themselves, such as what a task counts. */
  FactKinds(Map<String, FactType> names) {
    facts.putAll(names);
    cautions = List.of();
    complete = true;
    knowsCautions = true;
  }

  private void fact(Field field, String name, Doubt doubt) {
    facts.put(name, field.type());
    if (doubt.about(field.where()) || isHalf(field.type())) {
      doubtful.add(name);
    }
  }

  /** Whether there is nothing to choose from, or only part of a scale. */
  private static boolean isHalf(FactType type) {
    List<Option> options = type.choices();
    long scaled = options.stream().filter(o -> o.ordinal().isPresent()).count();
    boolean empty =
        (type instanceof FactType.OneOf || type instanceof FactType.SeveralOf) && options.isEmpty();
    return empty || (scaled != 0 && scaled != options.size());
  }

  /** The numbers a fact can take, both ends included. */
  record Span(double low, double high) {}

  /** The kind of an asked fact. */
  Optional<FactType> fact(String name) {
    return Optional.ofNullable(facts.get(name));
  }

  /** The term of this name, unless a question has taken the name. */
  Optional<Term> term(String name) {
    return facts.containsKey(name) ? Optional.empty() : Optional.ofNullable(terms.get(name));
  }

  /** The cautions that can be lowered or not; empty when they could not all be read. */
  Optional<List<String>> cautions() {
    return knowsCautions ? Optional.of(cautions) : Optional.empty();
  }

  boolean known(String name) {
    return facts.containsKey(name) || terms.containsKey(name) || name.equals(CLEARED);
  }

  /** Whether a name that is not known is a mistake: all names could be read. */
  boolean complete() {
    return complete;
  }

  /** Whether enough of this name could be read to judge how it is used. */
  boolean judged(String name) {
    return known(name)
        && !doubtful.contains(name)
        && !(term(name).orElse(null) instanceof Term.Computed && span(name).isEmpty());
  }

  Collection<String> names() {
    Collection<String> names = new TreeSet<>(facts.keySet());
    names.addAll(terms.keySet());
    names.add(CLEARED);
    return names;
  }

  /** The facts somebody asks. */
  Set<String> asked() {
    return facts.keySet();
  }

  /** In which slots a game can be wanted. */
  List<Integer> slots() {
    return java.util.stream.IntStream.rangeClosed(1, Bank.GAME_SLOTS)
        .filter(slot -> facts.containsKey("games." + slot + ".genre"))
        .boxed()
        .toList();
  }

  /**
   * The numbers a fact or computed term can take; empty if it is none, or if it is computed from
   * itself or from something that is no number.
   */
  Optional<Span> span(String name) {
    Optional<Span> done = ranges.get(name);
    if (done != null) {
      return done;
    }
    ranges.put(name, Optional.empty());
    Optional<Span> found =
        !facts.containsKey(name) && terms.get(name) instanceof Term.Computed computed
            ? span(computed)
            : Optional.ofNullable(facts.get(name)).flatMap(FactKinds::span);
    ranges.put(name, found);
    return found;
  }

  private static Optional<Span> span(FactType type) {
    if (type instanceof FactType.Amount amount) {
      return Optional.of(new Span(amount.minimum(), amount.maximum()));
    }
    if (type instanceof FactType.OneOf one && !one.options().isEmpty() && one.isScale()) {
      double low = one.options().stream().mapToDouble(o -> o.ordinal().orElse(0)).min().orElse(0);
      double high = one.options().stream().mapToDouble(o -> o.ordinal().orElse(0)).max().orElse(0);
      return Optional.of(new Span(low, high));
    }
    return Optional.empty();
  }

  private Optional<Span> span(Term.Computed computed) {
    if (computed.of().isEmpty()) {
      return Optional.empty();
    }
    if (computed.computation() == Term.Computation.COUNT) {
      return facts.get(computed.of().get(0)) instanceof FactType.SeveralOf several
          ? Optional.of(new Span(0, countable(several)))
          : Optional.empty();
    }
    double low = Double.POSITIVE_INFINITY;
    double high = Double.NEGATIVE_INFINITY;
    for (String part : computed.of()) {
      Optional<Span> span = span(part);
      if (span.isEmpty()) {
        return Optional.empty();
      }
      low = Math.min(low, span.get().low());
      high = Math.max(high, span.get().high());
    }
    if (computed.computation() != Term.Computation.DIFFERENCE) {
      return Optional.of(new Span(low, high));
    }
    return computed.of().size() == 2 ? difference(computed.of()) : Optional.empty();
  }

  private Optional<Span> difference(List<String> parts) {
    Span first = span(parts.get(0)).orElseThrow();
    Span second = span(parts.get(1)).orElseThrow();
    return Optional.of(new Span(first.low() - second.high(), first.high() - second.low()));
  }

  /** How many answers of a list can count. */
  static long countable(FactType.SeveralOf several) {
    return several.options().stream().filter(o -> !o.exclusive()).count();
  }
}
