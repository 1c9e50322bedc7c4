package closehand.json;

import closehand.bank.Condition;
import closehand.bank.Findings;
import closehand.bank.Hint;
import closehand.bank.Problem;
import closehand.bank.Rule;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** Reads the rules of one theme and makes out templates for each side and digit. */
final class RulesReader {
  private static final List<String> EXPECTATIONS = List.of("fires", "not", "waits");

  private final String theme;
  private final boolean withExamples;
  private final List<Problem> problems;

  /**
   * A reader for one theme.
   *
   * @param withExamples whether the examples are read too
   */
  RulesReader(String theme, boolean withExamples, List<Problem> problems) {
    this.theme = theme;
    this.withExamples = withExamples;
    this.problems = problems;
  }

  /** The rules in file order, one for each instance of a template. */
  List<Rule> read(List<JsonValue> values) {
    List<Rule> rules = new ArrayList<>();
    for (JsonValue value : values) {
      if (value instanceof JsonValue.Obj object) {
        rules(withExamples ? object : object.without("examples"), rules);
      } else {
        ObjectReading.wrongType(value, "an object: a rule", problems);
      }
    }
    return rules;
  }

  private void rules(JsonValue.Obj object, List<Rule> rules) {
    Findings findings = new Findings(problems);
    for (Template template : Template.of(object, problems)) {
      List<Problem> found = new ArrayList<>();
      rules.add(rule(template, template.fill(object), found));
      findings.addInstance(found);
    }
  }

  private Rule rule(Template template, JsonValue.Obj object, List<Problem> found) {
    ObjectReading in = new ObjectReading(object, found);
    ConditionReader conditions = new ConditionReader(found);
    in.optional("for");
    String id = in.text("id");
    String title = in.text("title");
    Condition when =
        in.required("when")
            .map(conditions::read)
            .orElseGet(() -> new Condition.Always(object.where()));
    Optional<Condition> unless = in.optional("unless").map(conditions::read);
    Rule.Effects effects =
        in.required("then").map(new EffectsReader(found)::read).orElse(EffectsReader.NONE);
    Reason reason = in.required("because").map(v -> reason(v, found)).orElse(Reason.NONE);
    List<String> basis = basis(in, found);
    List<Rule.Example> examples = new ArrayList<>();
    if (withExamples) {
      in.list("examples").forEach(e -> example(e, found).ifPresent(examples::add));
    }
    in.finish();
    return new Rule(
        id,
        template.name(),
        theme,
        title,
        when,
        unless,
        effects,
        reason.player,
        reason.brief,
        reason.clinician,
        basis,
        examples,
        object.where());
  }

  private static List<String> basis(ObjectReading in, List<Problem> found) {
    List<String> basis = in.texts("basis");
    if (in.optional("basis").orElse(null) instanceof JsonValue.Arr list && list.items().isEmpty()) {
      found.add(
          Problem.error(
              list.where(),
              "missing",
              "The rule has no basis.",
              "Name a source, or say \"common practice\"."));
    }
    return basis;
  }

  private record Reason(String player, String brief, Optional<String> clinician) {
    static final Reason NONE = new Reason("", "", Optional.empty());
  }

  private static Reason reason(JsonValue value, List<Problem> found) {
    if (!(value instanceof JsonValue.Obj object)) {
      ObjectReading.wrongType(value, "an object with \"player\"", found);
      return Reason.NONE;
    }
    ObjectReading in = new ObjectReading(object, found);
    String player = in.text("player");
    String brief = in.optionalText("short").orElse(player);
    Reason reason = new Reason(player, brief, in.optionalText("clinician"));
    in.finish();
    return reason;
  }

  private static Optional<Rule.Example> example(JsonValue value, List<Problem> found) {
    Optional<ObjectReading> reading = ObjectReading.of(value, found);
    if (reading.isEmpty()) {
      return Optional.empty();
    }
    ObjectReading in = reading.get();
    Rule.Given given =
        new Rule.Given(in.required("given").map(v -> FlatReader.read(v, found)).orElse(Map.of()));
    Optional<JsonValue> expect = in.required("expect");
    List<String> waits = in.optionalTexts("for");
    in.finish();
    String word = expect.orElse(null) instanceof JsonValue.Str text ? text.value() : "";
    for (Rule.Expect known : Rule.Expect.values()) {
      if (known.name().toLowerCase(Locale.ROOT).equals(word)) {
        return Optional.of(new Rule.Example(given, known, waits, value.where()));
      }
    }
    expect.ifPresent(
        e ->
            found.add(
                Problem.error(
                    e.where(),
                    "unknown-value",
                    "An example expects \"fires\", \"not\" or \"waits\".",
                    Hint.didYouMean(word, EXPECTATIONS))));
    return Optional.empty();
  }
}
