package closehand.rules;

import static closehand.rules.Say.HERE;

import closehand.bank.Approach;
import closehand.bank.Bank;
import closehand.bank.Caution;
import closehand.bank.CautionClass;
import closehand.bank.Condition;
import closehand.bank.EnableWhen;
import closehand.bank.FactType;
import closehand.bank.Field;
import closehand.bank.Option;
import closehand.bank.Question;
import closehand.bank.Questionnaire;
import closehand.bank.Rule;
import closehand.bank.Section;
import closehand.bank.TaskKind;
import closehand.bank.Term;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** Builds small invented banks. An option called "none" of a list excludes the others. */
final class TestBank {
  private static final int GATE = 3;

  private final List<Question> questions = new ArrayList<>();
  private final List<Term> terms = new ArrayList<>();
  private final List<TestRule> rules = new ArrayList<>();
  private final List<Approach> approaches = new ArrayList<>();
  private final List<Caution> cautions = new ArrayList<>();

  TestBank yesNo(String fact, EnableWhen... conditions) {
    return ask(0, fact, new FactType.YesNo(), conditions);
  }

  TestBank number(String fact, double minimum, double maximum, EnableWhen... conditions) {
    return ask(0, fact, new FactType.Amount(minimum, maximum, 0, ""), conditions);
  }

  TestBank decimal(String fact, double minimum, double maximum, int decimals) {
    return ask(0, fact, new FactType.Amount(minimum, maximum, decimals, ""));
  }

  TestBank one(String fact, List<String> codes, EnableWhen... conditions) {
    return ask(0, fact, new FactType.OneOf(options(codes, false)), conditions);
  }

  /** A question of the safety screen. */
  TestBank gate(String fact, String... codes) {
    return ask(GATE, fact, new FactType.OneOf(options(List.of(codes), false)));
  }

  /** A scale whose codes are its numbers. */
  TestBank scale(String fact, List<Integer> numbers, EnableWhen... conditions) {
    List<String> codes = numbers.stream().map(n -> Integer.toString(n)).toList();
    return ask(0, fact, new FactType.OneOf(options(codes, true)), conditions);
  }

  TestBank several(String fact, List<String> codes, EnableWhen... conditions) {
    return ask(0, fact, new FactType.SeveralOf(options(codes, false)), conditions);
  }

  TestBank words(String fact, EnableWhen... conditions) {
    return ask(0, fact, new FactType.Words(20), conditions);
  }

  TestBank wordList(String fact) {
    return ask(0, fact, new FactType.WordList());
  }

  private static List<Option> options(List<String> codes, boolean scale) {
    List<Option> options = new ArrayList<>();
    for (String code : codes) {
      OptionalDouble place =
          scale ? OptionalDouble.of(Double.parseDouble(code)) : OptionalDouble.empty();
      options.add(new Option("", code, code, place, code.equals("none"), HERE));
    }
    return options;
  }

  private TestBank ask(int weight, String fact, FactType type, EnableWhen... conditions) {
    Field field =
        new Field(
            fact,
            fact,
            Optional.empty(),
            Optional.empty(),
            type,
            false,
            List.of(conditions),
            List.of(),
            Optional.empty(),
            false,
            List.of(),
            HERE);
    questions.add(
        new Question(
            fact,
            "ALL",
            fact,
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            "",
            "",
            "",
            "",
            List.of(),
            Question.Route.CORE,
            Question.AskedBy.PLAYER,
            weight,
            List.of(field),
            HERE));
    return this;
  }

  TestBank derived(String id, Condition when) {
    terms.add(new Term.Derived(id, id, when, HERE));
    return this;
  }

  TestBank computed(String id, Term.Computation computation, String... of) {
    terms.add(new Term.Computed(id, id, computation, List.of(of), HERE));
    return this;
  }

  TestBank max(String id, String... of) {
    return computed(id, Term.Computation.MAXIMUM, of);
  }

  TestBank min(String id, String... of) {
    return computed(id, Term.Computation.MINIMUM, of);
  }

  TestBank approaches(String... ids) {
    Arrays.stream(ids).forEach(id -> approach(id, "pointing", "none", 5));
    return this;
  }

  TestBank approach(String id, String family, String costClass, double longestSetupMinutes) {
    Approach.Span none = new Approach.Span(0, 0, "");
    approaches.add(
        new Approach(
            id,
            new Approach.Words(id, "", "", "", "", "", "", "", "", "", "", "", "", ""),
            List.of(),
            none,
            none,
            OptionalDouble.empty(),
            none,
            new Approach.Span(0, longestSetupMinutes, ""),
            List.of(costClass),
            false,
            false,
            "none",
            family,
            List.of(),
            HERE));
    return this;
  }

  TestBank cautions(String... codes) {
    for (String code : codes) {
      cautions.add(
          new Caution(
              code,
              List.of(CautionClass.values()),
              true,
              true,
              code,
              code,
              List.of(),
              "",
              "",
              HERE));
    }
    return this;
  }

  /** A rule; what follows is said on what this returns. */
  TestRule rule(String id, Condition when) {
    TestRule rule = new TestRule(id, when);
    rules.add(rule);
    return rule;
  }

  Bank build() {
    return new Bank(
        new Questionnaire(
            "", "1", "Invented", List.of(new Section("ALL", "All", questions)), Map.of()),
        terms,
        rules.stream().map(TestRule::build).toList(),
        Map.of(),
        approaches,
        List.of(
            new Approach.CostClass("none", "nothing"),
            new Approach.CostClass("some", "something"),
            new Approach.CostClass("much", "much")),
        List.of(),
        List.of(),
        cautions,
        List.of(),
        Optional.empty(),
        Optional.empty(),
        "invented");
  }

  RuleBook book() {
    return RuleBook.of(build());
  }

  /** A rule in the making. */
  static final class TestRule {
    private final String id;
    private final Condition when;
    private Optional<Condition> unless = Optional.empty();
    private final List<Rule.Located> excludes = new ArrayList<>();
    private final List<Rule.Support> supports = new ArrayList<>();
    private final List<Rule.Raised> raised = new ArrayList<>();
    private final List<TaskKind> holds = new ArrayList<>();
    private final List<Rule.Example> examples = new ArrayList<>();

    private TestRule(String id, Condition when) {
      this.id = id;
      this.when = when;
    }

    TestRule unless(Condition condition) {
      unless = Optional.of(condition);
      return this;
    }

    TestRule points(String approach, int points) {
      supports.add(new Rule.Support(approach, points, HERE));
      return this;
    }

    TestRule excludes(String approach) {
      excludes.add(new Rule.Located(approach, HERE));
      return this;
    }

    TestRule raises(String code, CautionClass cautionClass) {
      raised.add(new Rule.Raised(code, cautionClass, HERE));
      return this;
    }

    TestRule holds(TaskKind kind) {
      holds.add(kind);
      return this;
    }

    TestRule example(Rule.Example example) {
      examples.add(example);
      return this;
    }

    private Rule build() {
      return new Rule(
          id,
          "",
          "invented",
          id,
          when,
          unless,
          new Rule.Effects(excludes, supports, raised, List.of(), List.of(), List.of(), holds),
          "Invented.",
          Optional.empty(),
          List.of("invented"),
          examples,
          HERE);
    }
  }
}
