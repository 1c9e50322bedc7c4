package closehand.rules;

import closehand.bank.Bank;
import closehand.bank.Condition;
import closehand.bank.Condition.Operand;
import closehand.bank.Condition.Test;
import closehand.bank.FactType;
import closehand.bank.Field;
import closehand.bank.Rule;
import closehand.bank.Term;
import closehand.bank.Term.Computation;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * Writes the rules of a bank in another language, terms written out in full. "Largest" becomes "one
 * of them is at least", and "at least n of" becomes a choice among all groups of n, because neither
 * language can count unknowns.
 */
abstract class OracleText {
  private final Map<String, Field> fields;
  private final Map<String, Term> terms = new LinkedHashMap<>();

  OracleText(Bank bank) {
    fields = bank.questionnaire().fieldsByFact();
    bank.terms().forEach(t -> terms.put(t.id(), t));
  }

  abstract String and(List<String> parts);

  abstract String or(List<String> parts);

  abstract String not(String part);

  /** A comparison of an answered fact. */
  abstract String leaf(Field field, String operator, Operand value);

  /** A comparison of how many answers of a list are picked. */
  abstract String count(Field field, String operator, double number);

  /** The text of an input of a largest or smallest that is left out where it does not apply. */
  String inputOfAll(Field field, String operator, Operand value) {
    return leaf(field, operator, value);
  }

  /** That at least one of these facts applies; empty where all always do. */
  Optional<String> someApply(List<Field> of) {
    return Optional.empty();
  }

  Field field(String fact) {
    return Optional.ofNullable(fields.get(fact)).orElseThrow();
  }

  /** The whole rule: "when" holds and "unless" does not. */
  String rule(Rule rule) {
    String when = text(rule.when());
    return rule.unless().map(u -> and(List.of(when, not(text(u))))).orElse(when);
  }

  String text(Condition condition) {
    if (condition instanceof Test test) {
      return test(test);
    }
    if (condition instanceof Condition.All all) {
      return and(texts(all.parts()));
    }
    if (condition instanceof Condition.Any any) {
      return or(texts(any.parts()));
    }
    if (condition instanceof Condition.Not not) {
      return not(text(not.part()));
    }
    if (condition instanceof Condition.AtLeast atLeast) {
      List<String> groups = new ArrayList<>();
      groups(texts(atLeast.parts()), 0, atLeast.count(), List.of(), groups);
      return or(groups);
    }
    throw new IllegalArgumentException("not written here: " + condition);
  }

  private List<String> texts(List<Condition> parts) {
    return parts.stream().map(this::text).toList();
  }

  private void groups(
      List<String> parts, int from, int count, List<String> taken, List<String> groups) {
    if (count == 0) {
      groups.add(and(taken));
      return;
    }
    for (int i = from; i <= parts.size() - count; i++) {
      List<String> more = new ArrayList<>(taken);
      more.add(parts.get(i));
      groups(parts, i + 1, count - 1, more, groups);
    }
  }

  private String test(Test test) {
    Term term = terms.get(test.fact());
    if (term instanceof Term.Derived derived) {
      boolean wanted = ((Operand.Flag) test.value()).value();
      return wanted ? text(derived.when()) : not(text(derived.when()));
    }
    if (term instanceof Term.Computed computed) {
      return computed(computed, test.operator(), test.value());
    }
    return leaf(field(test.fact()), test.operator(), test.value());
  }

  private String computed(Term.Computed term, String operator, Operand value) {
    if (term.computation() == Computation.COUNT) {
      return count(field(term.of().get(0)), operator, ((Operand.Number) value).value());
    }
    boolean upward = operator.startsWith(">");
    List<Field> inputs = inputs(term);
    if (upward == (term.computation() == Computation.MAXIMUM)) {
      return or(inputs.stream().map(f -> leaf(f, operator, value)).toList());
    }
    List<String> every =
        new ArrayList<>(inputs.stream().map(f -> inputOfAll(f, operator, value)).toList());
    someApply(inputs).ifPresent(every::add);
    return and(every);
  }

  private List<Field> inputs(Term.Computed term) {
    List<Field> inputs = new ArrayList<>();
    for (String id : term.of()) {
      if (terms.get(id) instanceof Term.Computed inner) {
        inputs.addAll(inputs(inner));
      } else {
        inputs.add(field(id));
      }
    }
    return inputs;
  }

  static String join(List<String> parts, String between) {
    return parts.stream().collect(Collectors.joining(between, "(", ")"));
  }

  /** Whether rules compare it by number. */
  static boolean numeric(Field field) {
    return field.type() instanceof FactType.Amount
        || (field.type() instanceof FactType.OneOf one && FactTable.isScale(one));
  }
}
