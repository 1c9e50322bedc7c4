package closehand.json;

import closehand.bank.CautionClass;
import closehand.bank.Condition;
import closehand.bank.Hint;
import closehand.bank.Problem;
import closehand.bank.Rule;
import closehand.bank.TaskKind;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Reads the rules of one theme and makes out templates for each side and digit. */
final class RulesReader {
  private final String theme;
  private final boolean withExamples;
  private final List<Problem> problems;
  private final ConditionReader conditions;

  /**
   * A reader for one theme.
   *
   * @param withExamples whether the examples are read too
   */
  RulesReader(String theme, boolean withExamples, List<Problem> problems) {
    this.theme = theme;
    this.withExamples = withExamples;
    this.problems = problems;
    this.conditions = new ConditionReader(problems);
  }

  /** The rules in file order, one for each instance of a template. */
  List<Rule> read(List<JsonValue> values) {
    List<Rule> rules = new ArrayList<>();
    for (JsonValue value : values) {
      if (value instanceof JsonValue.Obj object) {
        for (Template template : templates(object)) {
          rules.add(
              rule(template, template.fill(withExamples ? object : object.without("examples"))));
        }
      } else {
        ObjectReading.wrongType(value, "a rule", problems);
      }
    }
    return rules;
  }

  private List<Template> templates(JsonValue.Obj object) {
    Optional<JsonValue> over = object.member("for");
    if (over.isEmpty()) {
      return Template.instances("");
    }
    if (over.get() instanceof JsonValue.Str word
        && List.of("side", "digit").contains(word.value())) {
      return Template.instances(word.value());
    }
    problems.add(
        Problem.error(
            over.get().where(),
            "unknown-value",
            "\"for\" is \"side\" or \"digit\".",
            "Leave it out for a plain rule."));
    return Template.instances("");
  }

  private Rule rule(Template template, JsonValue.Obj object) {
    ObjectReading in = new ObjectReading(object, problems);
    in.optional("for");
    String id = in.text("id");
    String title = in.text("title");
    Condition when =
        in.required("when")
            .map(conditions::read)
            .orElseGet(() -> new Condition.Always(object.where()));
    Optional<Condition> unless = in.optional("unless").map(conditions::read);
    Rule.Effects effects = in.required("then").map(this::effects).orElse(NONE);
    Reason reason =
        in.required("because").map(this::reason).orElse(new Reason("", Optional.empty()));
    List<String> basis = in.texts("basis");
    if (basis.isEmpty() && object.member("basis").isPresent()) {
      problems.add(
          Problem.error(
              object.where(),
              "missing",
              "The rule has no basis.",
              "Name a source, or say \"common practice\"."));
    }
    List<Rule.Example> examples = new ArrayList<>();
    if (withExamples) {
      in.list("examples").forEach(e -> example(e).ifPresent(examples::add));
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
        reason.clinician,
        basis,
        examples,
        object.where());
  }

  private static final Rule.Effects NONE =
      new Rule.Effects(List.of(), List.of(), List.of(), List.of(), List.of(), List.of(), List.of());

  private record Reason(String player, Optional<String> clinician) {}

  private Reason reason(JsonValue value) {
    Optional<ObjectReading> in = ObjectReading.of(value, problems);
    if (in.isEmpty()) {
      return new Reason("", Optional.empty());
    }
    Reason reason = new Reason(in.get().text("player"), in.get().optionalText("clinician"));
    in.get().finish();
    return reason;
  }

  private Rule.Effects effects(JsonValue value) {
    Optional<ObjectReading> reading = ObjectReading.of(value, problems);
    if (reading.isEmpty()) {
      return NONE;
    }
    ObjectReading in = reading.get();
    Rule.Effects effects =
        new Rule.Effects(
            located(in.optionalList("exclude")),
            in.optional("support").map(this::support).orElse(List.of()),
            raised(in.optionalList("cautions")),
            in.optionalTexts("excludeEffectors"),
            effort(in.optionalList("effort")),
            advice(in.optionalList("advise")),
            holds(in.optionalList("holdTasks")));
    in.finish();
    if (effects.equals(NONE)) {
      problems.add(
          Problem.error(
              in.where(), "missing", "Nothing follows from this rule.", "Add an effect."));
    }
    return effects;
  }

  private List<Rule.Located> located(List<JsonValue> values) {
    List<Rule.Located> names = new ArrayList<>();
    for (JsonValue value : values) {
      if (value instanceof JsonValue.Str name) {
        names.add(new Rule.Located(name.value(), name.where()));
      } else {
        ObjectReading.wrongType(value, "an approach", problems);
      }
    }
    return names;
  }

  private List<Rule.Support> support(JsonValue value) {
    List<Rule.Support> support = new ArrayList<>();
    if (!(value instanceof JsonValue.Obj object)) {
      ObjectReading.wrongType(value, "an object of approach and points", problems);
      return support;
    }
    for (JsonValue.Member member : object.members()) {
      if (!(member.value() instanceof JsonValue.Num points)) {
        ObjectReading.wrongType(member.value(), "a number of points", problems);
      } else if (!points.isWhole() || Math.abs(points.value()) > 5 || points.value() == 0) {
        problems.add(
            Problem.error(
                points.where(),
                "out-of-range",
                "Points are whole numbers from -5 to 5, not 0.",
                ""));
      } else {
        support.add(new Rule.Support(member.name(), (int) points.value(), member.nameWhere()));
      }
    }
    return support;
  }

  private List<Rule.Raised> raised(List<JsonValue> values) {
    List<Rule.Raised> raised = new ArrayList<>();
    for (JsonValue value : values) {
      Optional<ObjectReading> in = ObjectReading.of(value, problems);
      if (in.isPresent()) {
        String code = in.get().text("code");
        cautionClass(in.get()).ifPresent(c -> raised.add(new Rule.Raised(code, c, value.where())));
        in.get().finish();
      }
    }
    return raised;
  }

  private Optional<CautionClass> cautionClass(ObjectReading in) {
    Optional<JsonValue> value = in.required("class");
    String word = value.orElse(null) instanceof JsonValue.Str text ? text.value() : "";
    Optional<CautionClass> found = CautionClass.of(word);
    if (found.isEmpty() && value.isPresent()) {
      List<String> known = Arrays.stream(CautionClass.values()).map(CautionClass::code).toList();
      problems.add(
          Problem.error(
              value.get().where(),
              "unknown-level",
              "\"" + word + "\" is not a class of caution (" + String.join(", ", known) + ").",
              Hint.didYouMean(word.toUpperCase(Locale.ROOT), known)));
    }
    return found;
  }

  private List<Rule.Effort> effort(List<JsonValue> values) {
    List<Rule.Effort> efforts = new ArrayList<>();
    for (JsonValue value : values) {
      Optional<ObjectReading> in = ObjectReading.of(value, problems);
      if (in.isPresent()) {
        List<String> effectors = in.get().texts("effectors");
        List<String> inputs = in.get().optionalTexts("inputs");
        double factor = in.get().optionalNumber("factor").orElse(0);
        if (factor < 0.5 || factor > 6) {
          problems.add(
              Problem.error(
                  value.where(),
                  "out-of-range",
                  "An effort factor is a number from 0.5 to 6.",
                  ""));
        }
        in.get().finish();
        efforts.add(new Rule.Effort(effectors, inputs, factor));
      }
    }
    return efforts;
  }

  private List<Rule.Advice> advice(List<JsonValue> values) {
    List<Rule.Advice> all = new ArrayList<>();
    for (JsonValue value : values) {
      ObjectReading.of(value, problems)
          .ifPresent(
              in -> {
                all.add(new Rule.Advice(in.text("topic"), in.text("say")));
                in.finish();
              });
    }
    return all;
  }

  private List<TaskKind> holds(List<JsonValue> values) {
    List<TaskKind> kinds = new ArrayList<>();
    for (JsonValue value : values) {
      String word = value instanceof JsonValue.Str text ? text.value() : "";
      Optional<TaskKind> kind = TaskKind.of(word);
      kind.ifPresent(kinds::add);
      if (kind.isEmpty()) {
        List<String> known = Arrays.stream(TaskKind.values()).map(TaskKind::code).toList();
        problems.add(
            Problem.error(
                value.where(),
                "unknown-value",
                "\"" + word + "\" is not a kind of task (" + String.join(", ", known) + ").",
                Hint.didYouMean(word, known)));
      }
    }
    return kinds;
  }

  private Optional<Rule.Example> example(JsonValue value) {
    Optional<ObjectReading> reading = ObjectReading.of(value, problems);
    if (reading.isEmpty()) {
      return Optional.empty();
    }
    ObjectReading in = reading.get();
    Rule.Given given =
        new Rule.Given(
            in.required("given").map(v -> FlatReader.read(v, problems)).orElse(java.util.Map.of()));
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
            problems.add(
                Problem.error(
                    e.where(),
                    "unknown-value",
                    "An example expects \"fires\", \"not\" or \"waits\".",
                    Hint.didYouMean(word, List.of("fires", "not", "waits")))));
    return Optional.empty();
  }
}
