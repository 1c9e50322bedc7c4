package closehand.rules;

import closehand.bank.Condition;
import closehand.bank.Term;
import closehand.interview.Answers;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * One set of answers with everything the rules make of it laid open, down to single comparisons.
 * Conditions are those of {@link #when}, {@link #unless} and {@link #behind}, or parts of them:
 * spread over the wanted games already.
 */
public final class Workings {
  /** Stands in a comparison for "this slot holds a game"; the fact is the kind of game. */
  public static final String LISTED = GameScope.LISTED;

  private final RuleBook book;
  private final BankView view;
  private final Program program;
  private final ConditionCompiler compiler;
  private final Advice advice;
  private final long[] state;
  private final Trace trace;
  private final Map<Condition, Node> nodes = new IdentityHashMap<>();

  private Workings(RuleBook book, Answers answers) {
    this.book = book;
    this.program = book.program();
    this.view = BankView.of(program.bank());
    this.compiler = new ConditionCompiler(program.table());
    this.advice = book.advise(answers);
    long[] base = book.base(answers);
    this.state = program.settle(base);
    this.trace = new Trace(program.owners(), base, state, program.facts().size());
  }

  /**
   * Lays open what the rules make of these answers, for all wanted games together.
   *
   * @throws IllegalArgumentException when an answer is not of its question's kind
   */
  public static Workings of(RuleBook book, Answers answers) {
    return new Workings(book, answers);
  }

  /** The numbers a fact or term may still be, both ends included. */
  public record Numbers(double least, double greatest) {}

  /** The advice as a whole; its findings are in rule order. */
  public Advice advice() {
    return advice;
  }

  /**
   * The facts whose open answers can still change which approach leads, in bank order; safety
   * questions that could stop everything aside. Empty where nothing can.
   */
  public List<String> overturning() {
    Outcome[] outcomes = program.outcomes(state);
    Firmness firmness =
        new Firmness(program, book.ranking(), book.judge().tally(outcomes), outcomes);
    Set<String> awaited = new HashSet<>();
    firmness.overturning().forEach(r -> awaited.addAll(advice.findings().get(r).waitsFor()));
    return program.facts().stream().filter(awaited::contains).toList();
  }

  /** What must hold for a rule, by its place in the bank. */
  public Condition when(int rule) {
    return view.clauses().get(rule).when();
  }

  /** What keeps a rule from applying, by its place in the bank. */
  public Optional<Condition> unless(int rule) {
    return view.clauses().get(rule).unless();
  }

  /** The condition behind a term that is yes or no; empty for everything else. */
  public Optional<Condition> behind(String term) {
    return Optional.ofNullable(view.derivedWhen().get(term));
  }

  /** The term of this name, if it is one. */
  public Optional<Term> term(String name) {
    return Optional.ofNullable(view.terms().get(name));
  }

  /** Whether a condition holds. */
  public Outcome outcome(Condition condition) {
    return node(condition).in(state);
  }

  /** The facts that settle a condition, in bank order; for an open one those known so far. */
  public List<String> supportedBy(Condition condition) {
    FactSet facts = new FactSet(program.facts().size());
    trace.support(node(condition), facts);
    return facts.names(program.facts());
  }

  /** The facts an open condition waits for, in bank order; empty for a settled one. */
  public List<String> waitsFor(Condition condition) {
    FactSet facts = new FactSet(program.facts().size());
    trace.waits(node(condition), facts);
    return facts.names(program.facts());
  }

  /** What a number may still be; empty for what is no number or does not apply. */
  public Optional<Numbers> numbers(String factOrTerm) {
    boolean known = view.fields().containsKey(factOrTerm) || view.terms().containsKey(factOrTerm);
    if (!known || !(program.table().shapeOf(factOrTerm) instanceof AmountShape amount)) {
      return Optional.empty();
    }
    long cells = state[program.table().slotOf(factOrTerm)] & amount.all();
    return cells == 0
        ? Optional.empty()
        : Optional.of(
            new Numbers(
                amount.line().low(Long.numberOfTrailingZeros(cells)),
                amount.line().high(63 - Long.numberOfLeadingZeros(cells))));
  }

  private Node node(Condition condition) {
    return nodes.computeIfAbsent(condition, compiler::node);
  }
}
