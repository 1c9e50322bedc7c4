package closehand.rules;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** What came of every rule for one set of answers, with its reasons. */
final class Reckoning {
  private final Program program;
  private final long[] base;
  private final long[] state;
  private final Outcome[] outcomes;
  private final List<Finding> findings;
  private final Tally tally;
  private final Trace trace;
  private final @Nullable FactSet[] waits;

  Reckoning(Program program, long[] base) {
    this.program = program;
    this.base = base;
    this.state = program.settle(base);
    this.outcomes = program.outcomes(state);
    this.tally = new Tally(program.bank().approaches().size(), program.rules(), outcomes);
    this.trace = new Trace(program.owners(), base, state, program.facts().size());
    this.waits = new FactSet[outcomes.length];
    this.findings = new ArrayList<>(outcomes.length);
    for (int i = 0; i < outcomes.length; i++) {
      findings.add(find(i));
    }
  }

  /** What came of one rule alone; the others are not looked at. */
  static Finding alone(Program program, long[] base, int index) {
    CompiledRule rule = program.rules().get(index);
    long[] state = program.settle(base);
    Outcome outcome = rule.in(state);
    Trace trace = new Trace(program.owners(), base, state, program.facts().size());
    FactSet support = new FactSet(program.facts().size());
    support(rule, outcome, state, trace, support);
    FactSet waits = new FactSet(program.facts().size());
    if (outcome == Outcome.OPEN) {
      trace.waits(rule.when(), waits);
      trace.waits(rule.unless(), waits);
    }
    return new Finding(
        rule.rule(),
        outcome,
        support.names(program.facts()),
        waits.names(program.facts()),
        outcome == Outcome.FALSE && rule.heldBack(state));
  }

  private Finding find(int index) {
    CompiledRule rule = program.rules().get(index);
    Outcome outcome = outcomes[index];
    return new Finding(
        rule.rule(),
        outcome,
        new FactNames(() -> support(index)),
        outcome == Outcome.OPEN ? new FactNames(() -> waitsOf(List.of(index))) : List.of(),
        outcome == Outcome.FALSE && rule.heldBack(state));
  }

  private synchronized List<String> support(int index) {
    FactSet support = emptySet();
    support(program.rules().get(index), outcomes[index], state, trace, support);
    return support.names(program.facts());
  }

  /** A rule that does not fire rests on its "when", or on "unless" if that alone keeps it. */
  private static void support(
      CompiledRule rule, Outcome outcome, long[] state, Trace trace, FactSet support) {
    Outcome when = rule.when().in(state);
    boolean fails = outcome == Outcome.FALSE;
    if (!(fails && when == Outcome.OPEN)) {
      trace.support(rule.when(), support);
    }
    if (!(fails && when == Outcome.FALSE)) {
      trace.support(rule.unless(), support);
    }
  }

  /** The names of all facts that these rules wait for, in order. */
  synchronized List<String> waitsOf(List<Integer> rules) {
    FactSet union = emptySet();
    for (int rule : rules) {
      union.addAll(waits(rule));
    }
    return union.names(program.facts());
  }

  private FactSet waits(int index) {
    FactSet known = waits[index];
    if (known == null) {
      known = emptySet();
      if (outcomes[index] == Outcome.OPEN) {
        trace.waits(program.rules().get(index).when(), known);
        trace.waits(program.rules().get(index).unless(), known);
      }
      waits[index] = known;
    }
    return known;
  }

  private FactSet emptySet() {
    return new FactSet(program.facts().size());
  }

  Program program() {
    return program;
  }

  long[] base() {
    return base;
  }

  long[] state() {
    return state;
  }

  Tally tally() {
    return tally;
  }

  List<Finding> findings() {
    return findings;
  }

  Finding finding(int rule) {
    return findings.get(rule);
  }

  Outcome[] outcomes() {
    return outcomes;
  }

  Outcome outcome(int rule) {
    return outcomes[rule];
  }
}
