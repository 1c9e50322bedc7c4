package closehand.rules;

import closehand.bank.Approach;
import closehand.bank.Bank;
import closehand.bank.Condition;
import closehand.bank.Field;
import closehand.bank.Term;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.IntStream;

/**
 * A bank made out: where every fact and term is kept, how terms are worked out, what each rule
 * reads.
 *
 * @param bank the bank
 * @param table facts and terms
 * @param steps how a state is worked out, each step after all it needs
 * @param owners whose each slot is
 * @param rules in bank order
 * @param facts the asked facts, in order
 */
record Program(
    Bank bank,
    FactTable table,
    List<Step> steps,
    Owners owners,
    List<CompiledRule> rules,
    List<String> facts) {

  /**
   * Makes a bank out.
   *
   * @throws IllegalArgumentException for a bank that does not pass the check of a bank
   */
  static Program of(Bank bank) {
    BankView view = BankView.of(bank);
    Strata strata = Strata.of(view);
    if (!strata.stuck().isEmpty()) {
      throw new IllegalArgumentException("terms that need themselves: " + strata.stuck());
    }
    FactTable table = new FactTable(view, strata.order());
    ConditionCompiler compiler = new ConditionCompiler(table);
    Map<Integer, Node> gates = new LinkedHashMap<>();
    List<Step> steps = new ArrayList<>();
    for (String id : strata.order()) {
      Field field = view.fields().get(id);
      if (field == null) {
        steps.add(term(view, table, compiler, id));
        continue;
      }
      Asked asked = table.asked(id);
      if (!field.conditions().isEmpty()) {
        Node gate = compiler.gate(field);
        gates.put(asked.order(), gate);
        steps.add(new Step.Gate(asked, gate));
      }
      listed(table, asked).ifPresent(steps::add);
    }
    return new Program(
        bank,
        table,
        List.copyOf(steps),
        new Owners(table, steps, gates),
        rules(view, compiler),
        List.copyOf(view.fields().keySet()));
  }

  private static Optional<Step> listed(FactTable table, Asked asked) {
    for (int game : table.games()) {
      if (asked.fact().equals(GameScope.genre(game))) {
        long none = asked.shape() instanceof ChoiceShape choice ? choice.cell("none") : 0;
        return Optional.of(new Step.Listed(asked, none, table.listedSlot(game)));
      }
    }
    return Optional.empty();
  }

  private static TermStep term(
      BankView view, FactTable table, ConditionCompiler compiler, String id) {
    int slot = table.slotOf(id);
    Condition when = view.derivedWhen().get(id);
    if (when != null) {
      return new TermStep.Derived(slot, compiler.node(when));
    }
    if (view.terms().get(id) instanceof Term.Computed computed) {
      return TermSteps.of(computed, table);
    }
    throw new IllegalArgumentException("no such term: " + id);
  }

  private static List<CompiledRule> rules(BankView view, ConditionCompiler compiler) {
    Map<String, Integer> numbers = new HashMap<>();
    for (Approach approach : view.bank().approaches()) {
      numbers.putIfAbsent(approach.id(), numbers.size());
    }
    List<CompiledRule> rules = new ArrayList<>();
    for (int i = 0; i < view.clauses().size(); i++) {
      rules.add(
          CompiledRule.of(view.bank().rules().get(i), view.clauses().get(i), compiler, numbers));
    }
    return List.copyOf(rules);
  }

  /** The places of the rules that are like this. */
  int[] rulesWhere(Predicate<CompiledRule> like) {
    return IntStream.range(0, rules.size()).filter(i -> like.test(rules.get(i))).toArray();
  }

  /** The state that follows from what the answers alone say. */
  long[] settle(long[] base) {
    long[] state = base.clone();
    for (int i = 0; i < steps.size(); i++) {
      steps.get(i).run(base, state);
    }
    return state;
  }

  /** What came of every rule in a state. */
  Outcome[] outcomes(long[] state) {
    Outcome[] outcomes = new Outcome[rules.size()];
    for (int i = 0; i < outcomes.length; i++) {
      outcomes[i] = rules.get(i).in(state);
    }
    return outcomes;
  }
}
