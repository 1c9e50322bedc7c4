package closehand.rules;

import closehand.bank.Bank;
import closehand.bank.Condition;
import closehand.bank.Condition.Operand;
import closehand.bank.EnableWhen;
import closehand.bank.FactType;
import closehand.bank.Field;
import closehand.bank.Option;
import closehand.bank.Rule;
import closehand.bank.Term;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.DoublePredicate;
import org.sat4j.core.VecInt;
import org.sat4j.minisat.SolverFactory;
import org.sat4j.specs.ContradictionException;
import org.sat4j.specs.ISolver;
import org.sat4j.specs.TimeoutException;

/**
 * An invented bank as clauses for an independent solver: one variable for every value of every
 * question, whole numbers each by itself, and every condition by the definitions of Tseitin (1968).
 * It shares no code with the engine.
 */
final class SatBank {
  private final Bank bank;
  private final List<int[]> clauses = new ArrayList<>();
  private final Map<String, Map<Object, Integer>> values = new LinkedHashMap<>();
  private final Map<String, Integer> applies = new LinkedHashMap<>();
  private final Map<String, Field> fields;
  private final Map<String, Term> terms = new LinkedHashMap<>();
  private int last;

  SatBank(Bank bank) {
    this.bank = bank;
    this.fields = bank.questionnaire().fieldsByFact();
    bank.terms().forEach(t -> terms.put(t.id(), t));
    fields.values().forEach(this::declare);
    fields.values().forEach(this::gate);
  }

  private int fresh() {
    return ++last;
  }

  private void clause(int... literals) {
    clauses.add(literals);
  }

  private void declare(Field field) {
    Map<Object, Integer> of = new LinkedHashMap<>();
    if (field.type() instanceof FactType.Amount amount) {
      for (double n = amount.minimum(); n <= amount.maximum(); n++) {
        of.put(n, fresh());
      }
    } else if (field.type() instanceof FactType.YesNo) {
      of.put("true", fresh());
      of.put("false", fresh());
    } else {
      field.type().choices().forEach(o -> of.put(o.code(), fresh()));
    }
    values.put(field.fact(), of);
    int here = fresh();
    applies.put(field.fact(), here);
    int[] some = new int[of.size() + 1];
    int next = 0;
    for (int value : of.values()) {
      clause(-value, here);
      some[next++] = value;
    }
    some[next] = -here;
    clause(some);
    if (field.type() instanceof FactType.SeveralOf several) {
      exclusive(several, of);
    } else {
      List<Integer> all = List.copyOf(of.values());
      for (int i = 0; i < all.size(); i++) {
        for (int j = i + 1; j < all.size(); j++) {
          clause(-all.get(i), -all.get(j));
        }
      }
    }
  }

  private void exclusive(FactType.SeveralOf several, Map<Object, Integer> of) {
    for (Option alone : several.options()) {
      for (Option other : several.options()) {
        if (alone.exclusive() && !alone.equals(other)) {
          clause(-of.get(alone.code()), -of.get(other.code()));
        }
      }
    }
  }

  private void gate(Field field) {
    List<Integer> all = new ArrayList<>();
    for (EnableWhen when : field.conditions()) {
      List<Integer> tests = when.tests().stream().map(this::test).toList();
      all.add(when.all() ? and(tests) : or(tests));
    }
    int gate = and(all);
    int here = applies.get(field.fact());
    clause(-gate, here);
    clause(gate, -here);
  }

  private int test(EnableWhen.Test test) {
    Map<Object, Integer> of = values.get(test.fact());
    boolean equal = test.operator() != EnableWhen.Operator.NOT_EQUAL;
    if (test.operator() == EnableWhen.Operator.EXISTS) {
      return applies.get(test.fact());
    }
    if (test.expected() instanceof EnableWhen.Expected.Number number) {
      return number(test.fact(), v -> v >= number.value());
    }
    Object value =
        test.expected() instanceof EnableWhen.Expected.Flag flag
            ? Boolean.toString(flag.value())
            : ((EnableWhen.Expected.Coded) test.expected()).code();
    int is = of.get(value);
    if (equal) {
      return is;
    }
    // Of several answers, some other one; of one answer, any but this one.
    return fields.get(test.fact()).type() instanceof FactType.SeveralOf
        ? or(of.values().stream().filter(v -> v != is).toList())
        : and(List.of(applies.get(test.fact()), -is));
  }

  private int and(List<Integer> parts) {
    int whole = fresh();
    int[] back = new int[parts.size() + 1];
    for (int i = 0; i < parts.size(); i++) {
      clause(-whole, parts.get(i));
      back[i] = -parts.get(i);
    }
    back[parts.size()] = whole;
    clause(back);
    return whole;
  }

  private int or(List<Integer> parts) {
    return -and(parts.stream().map(p -> -p).toList());
  }

  /** Whether a number of this name is one of these; false where it does not apply. */
  private int number(String id, DoublePredicate in) {
    Field field = fields.get(id);
    if (field != null) {
      List<Integer> some = new ArrayList<>();
      values
          .get(id)
          .forEach(
              (value, variable) -> {
                if (in.test(place(field, value))) {
                  some.add(variable);
                }
              });
      return or(some);
    }
    Term.Computed term = (Term.Computed) terms.get(id);
    return switch (term.computation()) {
      case COUNT -> count(term.of().get(0), in);
      case MAXIMUM -> extreme(term, in, true);
      case MINIMUM -> extreme(term, in, false);
      case DIFFERENCE -> throw new IllegalArgumentException("no differences here");
    };
  }

  private static double place(Field field, Object value) {
    if (value instanceof Double number) {
      return number;
    }
    return field.type().option((String) value).orElseThrow().ordinal().orElseThrow();
  }

  /** It is one of these when some input is and no input lies beyond it outside of these. */
  private int extreme(Term.Computed term, DoublePredicate in, boolean largest) {
    List<Integer> ways = new ArrayList<>();
    for (double n = 0; n <= 10; n++) {
      if (in.test(n)) {
        double at = n;
        List<Integer> parts = new ArrayList<>();
        parts.add(or(term.of().stream().map(i -> number(i, v -> v == at)).toList()));
        for (String input : term.of()) {
          parts.add(-number(input, v -> largest ? v > at : v < at));
        }
        ways.add(and(parts));
      }
    }
    return or(ways);
  }

  private int count(String fact, DoublePredicate in) {
    List<Integer> options = new ArrayList<>();
    for (Option option : fields.get(fact).type().choices()) {
      if (!option.exclusive()) {
        options.add(values.get(fact).get(option.code()));
      }
    }
    List<Integer> ways = new ArrayList<>();
    for (int set = 0; set < 1 << options.size(); set++) {
      if (in.test(Integer.bitCount(set))) {
        List<Integer> parts = new ArrayList<>(List.of(applies.get(fact)));
        for (int i = 0; i < options.size(); i++) {
          parts.add((set & 1 << i) != 0 ? options.get(i) : -options.get(i));
        }
        ways.add(and(parts));
      }
    }
    return or(ways);
  }

  private int condition(Condition condition) {
    if (condition instanceof Condition.Test test) {
      return test(test);
    }
    if (condition instanceof Condition.All all) {
      return and(all.parts().stream().map(this::condition).toList());
    }
    if (condition instanceof Condition.Any any) {
      return or(any.parts().stream().map(this::condition).toList());
    }
    if (condition instanceof Condition.Not not) {
      return -condition(not.part());
    }
    if (condition instanceof Condition.AtLeast atLeast) {
      List<Integer> parts = atLeast.parts().stream().map(this::condition).toList();
      List<Integer> ways = new ArrayList<>();
      for (int set = 0; set < 1 << parts.size(); set++) {
        if (Integer.bitCount(set) == atLeast.count()) {
          List<Integer> some = new ArrayList<>();
          for (int i = 0; i < parts.size(); i++) {
            if ((set & 1 << i) != 0) {
              some.add(parts.get(i));
            }
          }
          ways.add(and(some));
        }
      }
      return or(ways);
    }
    return and(List.of());
  }

  private int test(Condition.Test test) {
    if (terms.get(test.fact()) instanceof Term.Derived derived) {
      int holds = condition(derived.when());
      return ((Operand.Flag) test.value()).value() ? holds : -holds;
    }
    if (test.value() instanceof Operand.Number number) {
      double n = number.value();
      return number(
          test.fact(),
          switch (test.operator()) {
            case "<" -> v -> v < n;
            case "<=" -> v -> v <= n;
            case ">" -> v -> v > n;
            case ">=" -> v -> v >= n;
            default -> v -> v == n;
          });
    }
    Map<Object, Integer> of = values.get(test.fact());
    if (test.value() instanceof Operand.Flag flag) {
      return of.get(Boolean.toString(flag.value()));
    }
    if (test.value() instanceof Operand.Codes codes) {
      return or(codes.values().stream().map(c -> of.get(c.value())).toList());
    }
    return of.get(((Operand.Code) test.value()).value());
  }

  /** Whether any answers make all of these rules come out as wanted. */
  boolean possible(Map<Integer, Boolean> wanted) {
    List<Integer> units = new ArrayList<>();
    wanted.forEach(
        (index, fires) -> {
          Rule rule = bank.rules().get(index);
          int applies = condition(rule.when());
          Optional<Condition> unless = rule.unless();
          int holds = unless.isEmpty() ? applies : and(List.of(applies, -condition(unless.get())));
          units.add(fires ? holds : -holds);
        });
    ISolver solver = SolverFactory.newDefault();
    solver.newVar(last);
    try {
      for (int[] one : clauses) {
        solver.addClause(new VecInt(one.clone()));
      }
      for (int unit : units) {
        solver.addClause(new VecInt(new int[] {unit}));
      }
      return solver.isSatisfiable();
    } catch (ContradictionException e) {
      return false;
    } catch (TimeoutException e) {
      throw new IllegalStateException(e);
    }
  }
}
