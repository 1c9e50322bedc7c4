package closehand.rules;

import closehand.bank.Condition.Operand;
import closehand.bank.Condition.Test;
import closehand.bank.EnableWhen;
import closehand.bank.FactType;
import closehand.bank.Field;
import closehand.bank.Option;
import closehand.bank.Term;
import closehand.bank.Term.Computation;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableSet;
import java.util.TreeSet;

/**
 * Cuts the number lines of a bank. Facts and terms that a "largest" or "smallest" ties together
 * share one line, so that such a term is exact.
 */
final class NumberLines {
  private final BankView view;
  private final Map<String, String> parents = new HashMap<>();
  private final Map<String, Values> values = new LinkedHashMap<>();
  private final Map<String, NavigableSet<Double>> cuts = new HashMap<>();
  private final Map<String, NumberLine> lines = new HashMap<>();

  private NumberLines(BankView view) {
    this.view = view;
  }

  /**
   * The line of every numeric fact and term by id.
   *
   * @param order every fact and term, each after all it needs
   * @throws IllegalArgumentException when a line would need more than 63 cells
   */
  static Map<String, NumberLine> of(BankView view, List<String> order) {
    NumberLines building = new NumberLines(view);
    for (String id : order) {
      building.enter(id);
    }
    view.tests().forEach(building::cut);
    view.enableTests().forEach(building::cut);
    building.cutDifferences();
    building.makeLines();
    return building.lines;
  }

  private void enter(String id) {
    Field field = view.fields().get(id);
    if (field != null) {
      enterFact(id, field.type());
    } else if (view.terms().get(id) instanceof Term.Computed term) {
      enterTerm(term);
    }
  }

  private void enterFact(String id, FactType type) {
    if (type instanceof FactType.Amount amount) {
      values.put(id, new Values.Grid(amount.minimum(), amount.maximum(), amount.decimals()));
    } else if (type instanceof FactType.OneOf one && FactTable.isScale(one)) {
      List<Double> ordinals = new ArrayList<>();
      NavigableSet<Double> cut = cutsOf(root(id));
      for (Option option : one.options()) {
        double ordinal = option.ordinal().orElseThrow();
        ordinals.add(ordinal);
        cut.add(ordinal);
        cut.add(Math.nextUp(ordinal));
      }
      Collections.sort(ordinals);
      values.put(id, new Values.Points(ordinals));
    }
  }

  private void enterTerm(Term.Computed term) {
    switch (term.computation()) {
      case COUNT -> values.put(term.id(), new Values.Grid(0, countable(term), 0));
      case DIFFERENCE -> {
        Values first = domain(term.of().get(0));
        Values second = domain(term.of().get(1));
        values.put(
            term.id(),
            new Values.Grid(
                first.minimum() - second.maximum(),
                first.maximum() - second.minimum(),
                Math.max(first.decimals(), second.decimals())));
      }
      case MAXIMUM, MINIMUM -> term.of().forEach(input -> join(term.id(), input));
    }
  }

  private int countable(Term.Computed term) {
    Field several = view.fields().get(term.of().get(0));
    if (several == null) {
      throw new IllegalArgumentException("no such fact: " + term.of().get(0));
    }
    return (int) several.type().choices().stream().filter(o -> !o.exclusive()).count();
  }

  /** All the numbers a fact or term may take; for a largest or smallest the span of its inputs. */
  private Values domain(String id) {
    Values own = values.get(id);
    if (own != null) {
      return own;
    }
    if (view.terms().get(id) instanceof Term.Computed term) {
      List<Values> inputs = term.of().stream().map(this::domain).toList();
      return new Values.Grid(
          inputs.stream().mapToDouble(Values::minimum).min().orElseThrow(),
          inputs.stream().mapToDouble(Values::maximum).max().orElseThrow(),
          inputs.stream().mapToInt(Values::decimals).max().orElseThrow());
    }
    throw new IllegalArgumentException("no number: " + id);
  }

  private String root(String id) {
    String at = id;
    while (parents.containsKey(at)) {
      at = parents.get(at);
    }
    return at;
  }

  private void join(String one, String other) {
    String kept = root(one);
    String joined = root(other);
    if (!kept.equals(joined)) {
      parents.put(joined, kept);
      cutsOf(kept).addAll(cutsOf(joined));
    }
  }

  private NavigableSet<Double> cutsOf(String root) {
    return cuts.computeIfAbsent(root, r -> new TreeSet<>());
  }

  private void isolate(String id, double number) {
    cutsOf(root(id)).add(number);
    cutsOf(root(id)).add(Math.nextUp(number));
  }

  private void cut(Test test) {
    if (test.value() instanceof Operand.Number number) {
      cut(test.fact(), test.operator(), number.value());
    }
  }

  private void cut(EnableWhen.Test test) {
    if (test.expected() instanceof EnableWhen.Expected.Number number) {
      cut(test.fact(), test.operator().code(), number.value());
    }
  }

  private void cut(String id, String operator, double number) {
    switch (operator) {
      case "<", ">=" -> cutsOf(root(id)).add(number);
      case "<=", ">" -> cutsOf(root(id)).add(Math.nextUp(number));
      default -> isolate(id, number);
    }
  }

  /** A term that a difference reads is known by its cells alone, so each number gets one. */
  private void cutDifferences() {
    for (Term term : view.terms().values()) {
      if (term instanceof Term.Computed computed
          && computed.computation() == Computation.DIFFERENCE) {
        for (String input : computed.of()) {
          if (view.terms().containsKey(input)) {
            domain(input).upTo(NumberLine.MOST_CELLS).forEach(n -> isolate(input, n));
          }
        }
      }
    }
  }

  private void makeLines() {
    Map<String, List<Values>> members = new LinkedHashMap<>();
    values.forEach((id, own) -> members.computeIfAbsent(root(id), r -> new ArrayList<>()).add(own));
    Map<String, NumberLine> byRoot = new HashMap<>();
    members.forEach((root, own) -> byRoot.put(root, line(root, own)));
    List<String> ids = new ArrayList<>(values.keySet());
    ids.addAll(view.terms().keySet());
    for (String id : ids) {
      NumberLine line = byRoot.get(root(id));
      if (line != null) {
        lines.put(id, line);
      }
    }
  }

  private NumberLine line(String root, List<Values> own) {
    try {
      return NumberLine.of(own, cutsOf(root));
    } catch (IllegalArgumentException tooFine) {
      throw new IllegalArgumentException("too many cells for " + root, tooFine);
    }
  }
}
