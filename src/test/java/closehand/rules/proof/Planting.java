package closehand.rules.proof;

import static closehand.rules.proof.Sown.all;
import static closehand.rules.proof.Sown.any;
import static closehand.rules.proof.Sown.at;
import static closehand.rules.proof.Sown.effort;
import static closehand.rules.proof.Sown.excludes;
import static closehand.rules.proof.Sown.is;
import static closehand.rules.proof.Sown.points;
import static closehand.rules.proof.Sown.raises;

import closehand.bank.Bank;
import closehand.bank.Condition;
import closehand.bank.EnableWhen;
import closehand.bank.FactType;
import closehand.bank.Field;
import closehand.bank.Option;
import closehand.bank.Question;
import closehand.bank.Questionnaire;
import closehand.bank.Rule;
import closehand.bank.Section;
import closehand.bank.Term;
import closehand.bank.Where;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/** Plants faults in a copy of a bank and remembers what a check has to find. */
final class Planting {
  private static final Where HERE = Where.file("planted");
  private static final int EACH = 10;

  private final Bank core;
  private final List<Question> questions = new ArrayList<>();
  private final Map<String, List<Option>> extraOptions = new HashMap<>();
  private final List<Rule> rules = new ArrayList<>();
  private final List<Term> terms = new ArrayList<>();
  private final List<String> expected = new ArrayList<>();

  Planting(Bank core) {
    this.core = core;
  }

  /** What the check has to find: kind and subject. */
  List<String> expected() {
    return List.copyOf(expected);
  }

  void plantAll() {
    for (int i = 0; i < EACH; i++) {
      ask("planted.number." + i, new FactType.Amount(0, 10, 0, ""), 0, List.of());
      ask("planted.flag." + i, new FactType.YesNo(), 0, List.of());
    }
    List<Rule> giving =
        core.rules().stream()
            .filter(r -> r.effects().support().stream().anyMatch(s -> s.points() > 0))
            .filter(r -> !(r.when() instanceof Condition.Always))
            .toList();
    List<Rule> excluding =
        core.rules().stream().filter(r -> !r.effects().exclude().isEmpty()).toList();
    List<Field> choices = choices();
    for (int i = 0; i < EACH; i++) {
      String flag = "planted.flag." + i;
      String number = "planted.number." + i;
      String code = "P" + i;
      rule("NEVER" + i, all(is(flag, true), is(flag, false)), points("SET", 1));
      expect(Advisory.Kind.NEVER_FIRES, "NEVER" + i);
      rule("ALWAYS" + i, any(at(number, "<", 4), at(number, ">=", 4)), points("SET", 1));
      expect(Advisory.Kind.ALWAYS_FIRES, "ALWAYS" + i);
      same(giving.get(i * 3), "SAME" + i, flag);
      against(giving.get(i * 3 + 1), "AGAINST" + i);
      nothing(excluding.get(i * 2), "NOTHING" + i);
      unused(code);
      alike(choices.get(i));
      terms.add(
          new Term.Derived("planted.nobody." + i, "", all(is(flag, true), is(flag, false)), HERE));
      expect(Advisory.Kind.NOBODY_FEEDS, "planted.nobody." + i);
      terms.add(new Term.Derived("planted.idle." + i, "", is("planted.lost." + i, true), HERE));
      terms.add(new Term.Derived("planted.idler." + i, "", is("planted.idle." + i, true), HERE));
      ask("planted.lost." + i, new FactType.YesNo(), 0, List.of());
      expect(Advisory.Kind.UNUSED_TERM, "planted.idle." + i);
      expect(Advisory.Kind.UNUSED_TERM, "planted.idler." + i);
      expect(Advisory.Kind.UNUSED_QUESTION, "Q-planted.lost." + i);
      together(giving.get(i * 3 + 2), "TAKES" + i, flag);
      bands(code, number);
      doubt(i);
      unreachable(i, flag);
    }
  }

  private List<Field> choices() {
    Set<Field> read = new LinkedHashSet<>();
    for (Rule rule : core.rules()) {
      if (rule.when() instanceof Condition.Test test
          && test.value() instanceof Condition.Operand.Code) {
        Field field = core.questionnaire().fieldsByFact().get(test.fact());
        boolean plain =
            field != null && field.type() instanceof FactType.OneOf one && !one.isScale();
        if (plain) {
          read.add(field);
        }
      }
    }
    for (Field field : core.questionnaire().fieldsByFact().values()) {
      if (field.fact().startsWith("safe.")
          && field.type() instanceof FactType.OneOf one
          && !one.isScale()) {
        read.add(field);
      }
    }
    return List.copyOf(read);
  }

  private void same(Rule rule, String id, String flag) {
    rules.add(copy(rule, id, all(rule.when(), is(flag, true)), rule.effects()));
    expect(Advisory.Kind.SAYS_THE_SAME, id);
  }

  private void against(Rule rule, String id) {
    Rule.Support given =
        rule.effects().support().stream().filter(s -> s.points() > 0).findFirst().orElseThrow();
    rules.add(copy(rule, id, rule.when(), points(given.approach(), -given.points())));
    expect(Advisory.Kind.CONTRADICTS, id);
  }

  /** Two rules that take turns and take off together what a third gives. */
  private void together(Rule rule, String id, String flag) {
    Rule.Support given =
        rule.effects().support().stream().filter(s -> s.points() > 0).findFirst().orElseThrow();
    for (boolean turn : new boolean[] {true, false}) {
      Condition when = all(rule.when(), is(flag, turn));
      rules.add(copy(rule, id + turn, when, points(given.approach(), -given.points())));
      expect(Advisory.Kind.CONTRADICTS, id + turn);
    }
  }

  private void nothing(Rule rule, String id) {
    String out = rule.effects().exclude().get(0).name();
    rules.add(copy(rule, id, rule.when(), points(out, 2)));
    expect(Advisory.Kind.POINTS_NEVER_COUNT, id);
  }

  private void unused(String code) {
    ask("planted.unused." + code, new FactType.YesNo(), 0, List.of());
    expect(Advisory.Kind.UNUSED_QUESTION, "Q-planted.unused." + code);
  }

  private void alike(Field field) {
    extraOptions.put(
        field.fact(),
        List.of(option("planted-one", field.type()), option("planted-two", field.type())));
    expect(Advisory.Kind.ANSWERS_ALIKE, field.fact());
  }

  private static Option option(String code, FactType type) {
    return new Option(
        type.choices().get(0).system(), code, code, OptionalDouble.empty(), false, HERE);
  }

  private void bands(String code, String number) {
    rule("GAP" + code + "a", at(number, "<", 3), points("SET", 1));
    rule("GAP" + code + "b", at(number, ">=", 7), points("SET", 2));
    expect(Advisory.Kind.BAND_GAP, "GAP" + code + "a");
    rule("PUSH" + code + "a", at(number, "<", 3), effort("hold"));
    rule("PUSH" + code + "b", at(number, ">=", 7), effort("trigger"));
    expect(Advisory.Kind.BAND_GAP, "PUSH" + code + "a");
    rule("OVER" + code + "a", at(number, "<", 7), points("SET", 1));
    rule("OVER" + code + "b", at(number, ">=", 3), points("SET", 2));
    expect(Advisory.Kind.BAND_OVERLAP, "OVER" + code + "a");
  }

  private void doubt(int i) {
    String fact = "planted.sign." + i;
    ask(fact, new FactType.YesNo(), 3, List.of());
    String caution = core.cautions().get(0).code();
    rule("SIGN" + i, is(fact, true), raises(caution));
    expect(Advisory.Kind.NO_DOUBT, fact);
  }

  private void unreachable(int i, String flag) {
    String fact = "planted.far." + i;
    EnableWhen never = new EnableWhen(List.of(enabled(flag, true), enabled(flag, false)), true);
    ask(fact, new FactType.YesNo(), 0, List.of(never));
    rule("FAR" + i, is(fact, true), points("SET", 1));
    expect(Advisory.Kind.UNREACHABLE, fact);
  }

  private static EnableWhen.Test enabled(String fact, boolean value) {
    return new EnableWhen.Test(
        fact, EnableWhen.Operator.EQUAL, new EnableWhen.Expected.Flag(value), HERE);
  }

  /**
   * Rules that together can rule out every approach but settings.
   *
   * @param groups among how many rules the approaches are shared out; the odd ones come with a
   *     number, which has to lie in one band for all of them
   */
  void excludeEverything(int groups) {
    ask("planted.out", new FactType.Amount(0, 10, 0, ""), 0, List.of());
    for (int group = 0; group < groups; group++) {
      List<Rule.Located> out = new ArrayList<>();
      for (int i = group; i < core.approaches().size(); i += groups) {
        if (!core.approaches().get(i).family().equals("settings")) {
          out.add(new Rule.Located(core.approaches().get(i).id(), HERE));
        }
      }
      String flag = "planted.out." + group;
      ask(flag, new FactType.YesNo(), 0, List.of());
      Condition when = is(flag, group % 3 == 0);
      Condition banded = at("planted.out", group % 4 == 1 ? ">=" : "<=", 5);
      rule("OUT" + group, group % 2 == 1 ? all(when, banded) : when, excludes(out));
    }
  }

  /** The same rules, but that no two of them ever fire together. */
  void excludeEverythingButNeverAtOnce() {
    ask("planted.turn", new FactType.YesNo(), 0, List.of());
    for (boolean turn : new boolean[] {true, false}) {
      List<Rule.Located> out = new ArrayList<>();
      for (int i = turn ? 0 : 1; i < core.approaches().size(); i += 2) {
        out.add(new Rule.Located(core.approaches().get(i).id(), HERE));
      }
      rule("TURN" + turn, is("planted.turn", turn), excludes(out));
    }
  }

  /** Beside each rule that gives points, one with the same condition that rules the same out. */
  List<String> excludeWhatIsGiven() {
    List<String> expectedPairs = new ArrayList<>();
    for (Rule rule : core.rules()) {
      for (Rule.Support given : rule.effects().support()) {
        if (given.points() > 0) {
          String id = "X-" + rule.key() + "-" + given.approach();
          Rule.Effects out = excludes(List.of(new Rule.Located(given.approach(), HERE)));
          rules.add(copy(rule, id, rule.when(), out));
          expectedPairs.add(rule.key() + " " + given.approach());
        }
      }
    }
    return expectedPairs;
  }

  private void expect(Advisory.Kind kind, String subject) {
    expected.add(kind + " " + subject);
  }

  private void ask(String fact, FactType type, int weight, List<EnableWhen> conditions) {
    Field field =
        new Field(
            fact,
            fact,
            Optional.empty(),
            Optional.empty(),
            type,
            false,
            conditions,
            List.of(),
            Optional.empty(),
            false,
            List.of(),
            HERE);
    questions.add(
        new Question(
            "Q-" + fact,
            "PLANTED",
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
  }

  private void rule(String id, Condition when, Rule.Effects effects) {
    rules.add(
        new Rule(
            id,
            "",
            "planted",
            id,
            when,
            Optional.empty(),
            effects,
            "Planted.",
            Optional.empty(),
            List.of("planted"),
            List.of(),
            HERE));
  }

  private static Rule copy(Rule rule, String id, Condition when, Rule.Effects effects) {
    return new Rule(
        id,
        "",
        rule.theme(),
        id,
        when,
        rule.unless(),
        effects,
        "Planted.",
        Optional.empty(),
        List.of("planted"),
        List.of(),
        HERE);
  }

  /** The copy with everything planted. */
  Bank bank() {
    List<Section> sections = new ArrayList<>();
    for (Section section : core.questionnaire().sections()) {
      sections.add(
          new Section(
              section.id(),
              section.title(),
              section.questions().stream().map(this::withOptions).toList()));
    }
    sections.add(new Section("PLANTED", "Planted", questions));
    List<Rule> allRules = new ArrayList<>(core.rules());
    allRules.addAll(rules);
    List<Term> allTerms = new ArrayList<>(core.terms());
    allTerms.addAll(terms);
    Questionnaire before = core.questionnaire();
    return new Bank(
        new Questionnaire(
            before.url(), before.version(), before.title(), sections, before.groupTexts()),
        allTerms,
        allRules,
        core.themes(),
        core.approaches(),
        core.costClasses(),
        core.mixes(),
        core.games(),
        core.cautions(),
        core.sources(),
        core.planFigures(),
        core.tasks(),
        "planted");
  }

  private Question withOptions(Question question) {
    List<Field> fields = question.fields().stream().map(this::withOptions).toList();
    return new Question(
        question.id(),
        question.section(),
        question.text(),
        question.shortName(),
        question.remoteText(),
        question.aloneText(),
        question.why(),
        question.inTheRoom(),
        question.overVideo(),
        question.alone(),
        question.helpConditions(),
        question.route(),
        question.askedBy(),
        question.safetyWeight(),
        fields,
        question.where());
  }

  private Field withOptions(Field field) {
    List<Option> extra = extraOptions.getOrDefault(field.fact(), List.of());
    if (extra.isEmpty()) {
      return field;
    }
    List<Option> options = new ArrayList<>(field.type().choices());
    options.addAll(extra);
    return new Field(
        field.fact(),
        field.label(),
        field.remoteLabel(),
        field.aloneLabel(),
        new FactType.OneOf(options),
        field.required(),
        field.conditions(),
        field.groups(),
        field.task(),
        field.askedAgain(),
        field.classification(),
        field.where());
  }
}
