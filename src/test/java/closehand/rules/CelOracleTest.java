package closehand.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import closehand.bank.Bank;
import closehand.bank.FactType;
import closehand.bank.Field;
import closehand.bank.Option;
import closehand.bank.Rule;
import closehand.interview.Answers;
import closehand.interview.Dice;
import closehand.interview.Value;
import dev.cel.common.CelValidationException;
import dev.cel.common.types.CelType;
import dev.cel.common.types.SimpleType;
import dev.cel.compiler.CelCompiler;
import dev.cel.compiler.CelCompilerBuilder;
import dev.cel.compiler.CelCompilerFactory;
import dev.cel.runtime.CelAttributePattern;
import dev.cel.runtime.CelEvaluationException;
import dev.cel.runtime.CelRuntime;
import dev.cel.runtime.CelRuntimeFactory;
import dev.cel.runtime.CelUnknownSet;
import dev.cel.runtime.PartialVars;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The Common Expression Language (github.com/cel-expr/cel-java, planner runtime with partial
 * variables) comes to the same outcome for every rule and every incomplete set of answers, and
 * names the same unknown facts where it comes to none.
 */
class CelOracleTest {
  private static final int RULES = 40;
  private static final int CASES = 50;

  @ParameterizedTest
  @ValueSource(longs = {201, 202})
  void agreesOnEveryOutcomeAndWhatItWaitsFor(long seed)
      throws CelValidationException, CelEvaluationException {
    Bank bank = RandomBank.of(seed, RULES, false);
    RuleBook book = RuleBook.of(bank);
    List<CelRuntime.Program> programs = programs(bank);
    Dice dice = new Dice(seed);
    int open = 0;
    for (int i = 0; i < CASES; i++) {
      Answers answers = RandomBank.part(book, RandomBank.fill(book, Answers.NONE, dice), 3, dice);
      PartialVars variables = variables(bank, answers);
      for (int rule = 0; rule < RULES; rule++) {
        Object result = programs.get(rule).eval(variables);
        Finding finding = book.find(rule, answers);
        assertEquals(outcome(result), finding.outcome(), "case " + i + " rule " + rule);
        if (result instanceof CelUnknownSet unknown) {
          assertEquals(facts(unknown), new TreeSet<>(finding.waitsFor()), "case " + i);
          open++;
        }
      }
    }
    assertTrue(open > RULES * CASES / 20, "open outcomes compared: " + open);
  }

  private static List<CelRuntime.Program> programs(Bank bank)
      throws CelValidationException, CelEvaluationException {
    CelCompilerBuilder builder = CelCompilerFactory.standardCelCompilerBuilder();
    for (Field field : bank.questionnaire().fieldsByFact().values()) {
      if (field.type() instanceof FactType.SeveralOf several) {
        for (Option option : several.options()) {
          builder.addVar(CelText.variable(field.fact(), option.code()), SimpleType.BOOL);
        }
      } else {
        builder.addVar(field.fact(), type(field));
      }
    }
    CelCompiler compiler = builder.build();
    CelRuntime runtime = CelRuntimeFactory.plannerRuntimeBuilder().build();
    CelText text = new CelText(bank);
    List<CelRuntime.Program> programs = new ArrayList<>();
    for (Rule rule : bank.rules()) {
      programs.add(runtime.createProgram(compiler.compile(text.rule(rule)).getAst()));
    }
    return programs;
  }

  private static CelType type(Field field) {
    if (field.type() instanceof FactType.YesNo) {
      return SimpleType.BOOL;
    }
    return OracleText.numeric(field) ? SimpleType.DOUBLE : SimpleType.STRING;
  }

  private static PartialVars variables(Bank bank, Answers answers) {
    Map<String, Object> known = new HashMap<>();
    List<CelAttributePattern> unknown = new ArrayList<>();
    for (Field field : bank.questionnaire().fieldsByFact().values()) {
      List<String> names =
          field.type() instanceof FactType.SeveralOf
              ? field.type().choices().stream()
                  .map(o -> CelText.variable(field.fact(), o.code()))
                  .toList()
              : List.of(field.fact());
      if (answers.value(field.fact()).isPresent()) {
        put(known, field, answers.value(field.fact()).get());
      } else {
        names.forEach(name -> unknown.add(CelAttributePattern.create(name)));
      }
    }
    return PartialVars.of(known, unknown.toArray(new CelAttributePattern[0]));
  }

  private static void put(Map<String, Object> known, Field field, Value value) {
    if (value instanceof Value.Codes codes) {
      for (Option option : field.type().choices()) {
        known.put(
            CelText.variable(field.fact(), option.code()), codes.codes().contains(option.code()));
      }
    } else if (value instanceof Value.Flag flag) {
      known.put(field.fact(), flag.value());
    } else if (value instanceof Value.Number number) {
      known.put(field.fact(), number.value());
    } else if (value instanceof Value.Code code) {
      known.put(
          field.fact(), OracleText.numeric(field) ? Double.valueOf(code.code()) : code.code());
    }
  }

  private static Outcome outcome(Object result) {
    if (result instanceof Boolean holds) {
      return holds ? Outcome.TRUE : Outcome.FALSE;
    }
    return Outcome.OPEN;
  }

  /** The facts behind the unknown variables; of a list of answers the variables are its options. */
  private static Set<String> facts(CelUnknownSet unknown) {
    return unknown.attributes().stream()
        .map(Object::toString)
        .map(name -> name.contains("_") ? name.substring(0, name.indexOf('_')) : name)
        .collect(Collectors.toCollection(TreeSet::new));
  }
}
