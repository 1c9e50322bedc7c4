package closehand.rules;

import closehand.bank.CautionClass;
import closehand.bank.Rule;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.IntConsumer;

/**
 * A rule made out: its conditions over cells, its effects by the number of the approach.
 *
 * @param rule the rule
 * @param when what must hold
 * @param unless what keeps it from firing
 * @param supports points by approach
 * @param excludes approaches ruled out
 * @param strongest the strongest class of caution it raises, if it raises any
 */
record CompiledRule(
    Rule rule,
    Node when,
    Node unless,
    List<Points> supports,
    List<Integer> excludes,
    Optional<CautionClass> strongest) {

  CompiledRule {
    supports = List.copyOf(supports);
    excludes = List.copyOf(excludes);
  }

  /** Points for or against an approach, by its number in the bank. */
  record Points(int approach, int points) {}

  /**
   * Makes a rule out.
   *
   * @param numbers the number of each approach
   * @throws IllegalArgumentException for an approach, fact or comparison that does not exist
   */
  static CompiledRule of(
      Rule rule,
      BankView.Clauses clauses,
      ConditionCompiler compiler,
      Map<String, Integer> numbers) {
    return new CompiledRule(
        rule,
        compiler.node(clauses.when()),
        clauses.unless().map(compiler::node).orElse(new Node.Fixed(Outcome.FALSE)),
        supports(rule, numbers),
        excludes(rule, numbers),
        strongest(rule));
  }

  private static List<Points> supports(Rule rule, Map<String, Integer> numbers) {
    List<Points> supports = new ArrayList<>();
    for (Rule.Support support : rule.effects().support()) {
      supports.add(new Points(number(numbers, support.approach()), support.points()));
    }
    return supports;
  }

  private static List<Integer> excludes(Rule rule, Map<String, Integer> numbers) {
    List<Integer> excludes = new ArrayList<>();
    for (Rule.Located exclude : rule.effects().exclude()) {
      excludes.add(number(numbers, exclude.name()));
    }
    return excludes;
  }

  private static Optional<CautionClass> strongest(Rule rule) {
    Optional<CautionClass> strongest = Optional.empty();
    for (Rule.Raised raised : rule.effects().cautions()) {
      CautionClass one = raised.cautionClass();
      if (strongest.isEmpty() || one.compareTo(strongest.get()) > 0) {
        strongest = Optional.of(one);
      }
    }
    return strongest;
  }

  private static int number(Map<String, Integer> numbers, String approach) {
    return Optional.ofNullable(numbers.get(approach))
        .orElseThrow(() -> new IllegalArgumentException("no such approach: " + approach));
  }

  /** Whether it fires: {@link #when} holds and {@link #unless} does not. */
  Outcome in(long[] state) {
    Outcome applies = when.in(state);
    if (applies == Outcome.FALSE) {
      return applies;
    }
    Outcome free = unless.in(state).not();
    return free == Outcome.TRUE ? applies : free;
  }

  /** Whether it would fire but for {@link #unless}. */
  boolean heldBack(long[] state) {
    return when.in(state) == Outcome.TRUE && unless.in(state) == Outcome.TRUE;
  }

  /** Every slot it reads. */
  void slots(IntConsumer each) {
    when.slots(each);
    unless.slots(each);
  }

  /** Notes the approaches that it gives points for or against, or rules out. */
  void touches(BitSet approaches) {
    for (Points each : supports) {
      approaches.set(each.approach());
    }
    for (int excluded : excludes) {
      approaches.set(excluded);
    }
  }

  /** Whether it raises a caution that stops something. */
  boolean stops() {
    return strongest.isPresent() && strongest.get().stops();
  }
}
