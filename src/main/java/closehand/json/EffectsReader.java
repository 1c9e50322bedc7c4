package closehand.json;

import closehand.bank.CautionClass;
import closehand.bank.Hint;
import closehand.bank.Problem;
import closehand.bank.Rule;
import closehand.bank.TaskKind;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Reads what follows when a rule fires. */
final class EffectsReader {
  static final Rule.Effects NONE =
      new Rule.Effects(List.of(), List.of(), List.of(), List.of(), List.of(), List.of(), List.of());

  private static final int MOST_POINTS = 5;
  private static final double LEAST_FACTOR = 0.5;
  private static final double MOST_FACTOR = 6;

  private final List<Problem> problems;

  EffectsReader(List<Problem> problems) {
    this.problems = problems;
  }

  Rule.Effects read(JsonValue value) {
    Optional<ObjectReading> reading = ObjectReading.of(value, problems);
    if (reading.isEmpty()) {
      return NONE;
    }
    ObjectReading in = reading.get();
    int before = problems.size();
    Rule.Effects effects =
        new Rule.Effects(
            excluded(in.optionalList("exclude")),
            in.optional("support").map(this::support).orElse(List.of()),
            raised(in.optionalList("cautions")),
            in.optionalTexts("excludeEffectors"),
            effort(in.optionalList("effort")),
            advice(in.optionalList("advise")),
            holds(in.optionalList("holdTasks")));
    in.finish();
    if (effects.equals(NONE) && problems.size() == before) {
      problems.add(
          Problem.error(
              in.where(),
              "missing",
              "Nothing follows from this rule.",
              "Add exclude, support, cautions, excludeEffectors, effort, advise or holdTasks."));
    }
    return effects;
  }

  private List<Rule.Located> excluded(List<JsonValue> values) {
    List<Rule.Located> names = new ArrayList<>();
    for (JsonValue value : values) {
      for (String name : ObjectReading.texts(List.of(value), problems)) {
        names.add(new Rule.Located(name, value.where()));
      }
    }
    return names;
  }

  private List<Rule.Support> support(JsonValue value) {
    List<Rule.Support> support = new ArrayList<>();
    if (!(value instanceof JsonValue.Obj object)) {
      ObjectReading.wrongType(value, "an object of approaches and their points", problems);
      return support;
    }
    for (JsonValue.Member member : object.members()) {
      if (member.name().isBlank()) {
        problems.add(
            Problem.error(
                member.nameWhere(), "missing", "This name is empty.", "Name an approach."));
      } else if (!(member.value() instanceof JsonValue.Num points)) {
        ObjectReading.wrongType(member.value(), "a number of points", problems);
      } else if (!points.isWhole()
          || Math.abs(points.value()) > MOST_POINTS
          || points.value() == 0) {
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
    String word = in.text("class");
    Optional<CautionClass> found = CautionClass.of(word);
    if (found.isEmpty() && !word.isBlank()) {
      List<String> known = Arrays.stream(CautionClass.values()).map(CautionClass::code).toList();
      unknown(
          in.optional("class").orElseThrow(),
          "unknown-level",
          "\"" + word + "\" is not a class of caution (" + String.join(", ", known) + ").",
          Hint.didYouMean(word.toUpperCase(Locale.ROOT), known));
    }
    return found;
  }

  private List<Rule.Effort> effort(List<JsonValue> values) {
    List<Rule.Effort> efforts = new ArrayList<>();
    for (JsonValue value : values) {
      ObjectReading.of(value, problems).ifPresent(in -> efforts.add(effort(in)));
    }
    return efforts;
  }

  private static Rule.Effort effort(ObjectReading in) {
    List<String> effectors = in.texts("effectors");
    List<String> inputs = in.optionalTexts("inputs");
    in.required("factor");
    double factor = in.optionalNumber("factor", LEAST_FACTOR, MOST_FACTOR).orElse(1);
    in.finish();
    return new Rule.Effort(effectors, inputs, factor);
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
    List<String> known = Arrays.stream(TaskKind.values()).map(TaskKind::code).toList();
    for (JsonValue value : values) {
      for (String word : ObjectReading.texts(List.of(value), problems)) {
        TaskKind.of(word)
            .ifPresentOrElse(
                kinds::add,
                () ->
                    unknown(
                        value,
                        "unknown-value",
                        "\""
                            + word
                            + "\" is not a kind of task ("
                            + String.join(", ", known)
                            + ").",
                        Hint.didYouMean(word, known)));
      }
    }
    return kinds;
  }

  private void unknown(JsonValue value, String code, String what, String mend) {
    problems.add(Problem.error(value.where(), code, what, mend));
  }
}
