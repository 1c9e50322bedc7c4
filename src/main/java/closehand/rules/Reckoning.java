package closehand.rules;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What came of every rule for one set of answers, with its reasons. */
final class Reckoning {
  private final Program program;
  private final long[] base;
  private final long[] state;
  private final Outcome[] outcomes;
  private final List<Finding> findings = new ArrayList<>();
  private final List<Optional<FactSet>> waits = new ArrayList<>();
  private final Tally tally;

  Reckoning(Program program, long[] base) {
    this.program = program;
    this.base = base;
    this.state = program.settle(base);
    this.outcomes = program.outcomes(state);
    this.tally = new Tally(program.bank().approaches().size(), program.rules(), outcomes);
    Trace trace = new Trace(program.owners(), state);
    FactSet support = emptySet();
    for (int i = 0; i < outcomes.length; i++) {
      support.clear();
      find(program.rules().get(i), outcomes[i], trace, support);
    }
  }

  /** What came of one rule alone. */
  static Finding one(Program program, CompiledRule rule, long[] base) {
    long[] state = program.settle(base);
    Trace trace = new Trace(program.owners(), state);
    FactSet support = new FactSet(program.facts().size());
    FactSet waits = new FactSet(program.facts().size());
    Outcome outcome = rule.in(state);
    addSupport(rule, outcome, state, trace, support);
    if (outcome == Outcome.OPEN) {
      trace.waits(rule.when(), waits);
      trace.waits(rule.unless(), waits);
    }
    return new Finding(
        rule.rule(),
        outcome,
        support.names(program.facts()),
        waits.names(program.facts()),
        rule.heldBack(state));
  }

  private void find(CompiledRule rule, Outcome outcome, Trace trace, FactSet support) {
    addSupport(rule, outcome, state, trace, support);
    Optional<FactSet> waitsFor = Optional.empty();
    if (outcome == Outcome.OPEN) {
      FactSet set = emptySet();
      trace.waits(rule.when(), set);
      trace.waits(rule.unless(), set);
      waitsFor = Optional.of(set);
    }
    waits.add(waitsFor);
    findings.add(
        new Finding(
            rule.rule(),
            outcome,
            names(support),
            waitsFor.map(this::names).orElse(List.of()),
            outcome == Outcome.FALSE && rule.heldBack(state)));
  }

  /** A rule that does not fire rests on its "when", or on "unless" if that alone keeps it. */
  private static void addSupport(
      CompiledRule rule, Outcome outcome, long[] state, Trace trace, FactSet support) {
    boolean whenFails = outcome == Outcome.FALSE && rule.when().in(state) == Outcome.FALSE;
    boolean unlessAlone = outcome == Outcome.FALSE && rule.when().in(state) == Outcome.OPEN;
    if (!unlessAlone) {
      trace.support(rule.when(), support);
    }
    if (!whenFails) {
      trace.support(rule.unless(), support);
    }
  }

  /** An empty set of facts. */
  FactSet emptySet() {
    return new FactSet(program.facts().size());
  }

  /** The names of facts, in order. */
  List<String> names(FactSet facts) {
    return facts.names(program.facts());
  }

  /** The names of all facts that these open rules wait for, in order. */
  List<String> waitsOf(List<Integer> rules) {
    FactSet union = emptySet();
    for (int rule : rules) {
      waits.get(rule).ifPresent(union::addAll);
    }
    return names(union);
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

  Outcome outcome(int rule) {
    return outcomes[rule];
  }
}
