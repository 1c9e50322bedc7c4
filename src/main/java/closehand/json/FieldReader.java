package closehand.json;

import closehand.bank.EnableWhen;
import closehand.bank.FactType;
import closehand.bank.Field;
import closehand.bank.Option;
import closehand.bank.Problem;
import closehand.bank.TaskKind;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Reads one question item of the questionnaire as a field: its kind of value, range, unit and
 * options.
 */
final class FieldReader {
  private static final int DEFAULT_WORDS = 500;

  private final List<Problem> problems;

  FieldReader(List<Problem> problems) {
    this.problems = problems;
  }

  /**
   * Reads a question item.
   *
   * @param in the item; its children have been read already
   * @param around the conditions of the groups around it
   * @param groups the link ids of those groups
   */
  Field read(
      ObjectReading in, List<EnableWhen> around, List<String> groups, FhirExtensions extensions) {
    String fact = in.text("linkId");
    String text = in.text("text");
    String type = in.text("type");
    boolean repeats = in.flag("repeats", false);
    List<EnableWhen> conditions = new ArrayList<>(around);
    EnableWhenReader.read(in, problems).ifPresent(conditions::add);
    return new Field(
        fact,
        text,
        extensions.textOf(FhirExtensions.OWN + "remote-text", "valueString"),
        type(in, type, repeats, extensions),
        in.flag("required", false),
        conditions,
        groups,
        task(in, extensions),
        extensions.flagOf(FhirExtensions.OWN + "repeat-safety"),
        classification(in),
        in.where());
  }

  private FactType type(ObjectReading in, String type, boolean repeats, FhirExtensions extensions) {
    List<Option> options = options(in.optionalList("answerOption"));
    int length =
        in.optional("maxLength").isPresent() ? in.whole("maxLength", 1, 16_384) : DEFAULT_WORDS;
    if (repeats && !type.equals("choice") && !type.equals("string")) {
      problems.add(
          Problem.error(in.where(), "wrong-type", "Only choice and string items may repeat.", ""));
    }
    return switch (type) {
      case "boolean" -> new FactType.YesNo();
      case "integer" -> amount(in, extensions, "valueInteger", 0);
      case "decimal" ->
          amount(
              in,
              extensions,
              "valueDecimal",
              extensions
                  .numberOf(FhirExtensions.HL7 + "maxDecimalPlaces", "valueInteger")
                  .orElse(1.0)
                  .intValue());
      case "choice" -> repeats ? new FactType.SeveralOf(options) : new FactType.OneOf(options);
      case "text" -> new FactType.Words(length);
      case "string" -> repeats ? new FactType.WordList() : new FactType.Words(length);
      default -> unknownType(in, type);
    };
  }

  private FactType unknownType(ObjectReading in, String type) {
    problems.add(
        Problem.error(
            in.where(),
            "unknown-type",
            "\"" + type + "\" is not a type of question used here.",
            "Use boolean, integer, decimal, choice, text or string."));
    return new FactType.Words(DEFAULT_WORDS);
  }

  private FactType amount(
      ObjectReading in, FhirExtensions extensions, String member, int decimals) {
    Optional<Double> minimum = extensions.numberOf(FhirExtensions.HL7 + "minValue", member);
    Optional<Double> maximum = extensions.numberOf(FhirExtensions.HL7 + "maxValue", member);
    if (minimum.isEmpty() || maximum.isEmpty()) {
      problems.add(
          Problem.error(
              in.where(),
              "missing",
              "A number needs its smallest and largest value.",
              "Add minValue and maxValue."));
    } else if (minimum.get() > maximum.get()) {
      problems.add(
          Problem.error(in.where(), "out-of-range", "minValue is above maxValue.", "Swap them?"));
    }
    String unit =
        extensions
            .value(FhirExtensions.HL7 + "questionnaire-unit", "valueCoding")
            .map(
                v ->
                    v instanceof JsonValue.Obj o
                            && o.member("code").orElse(null) instanceof JsonValue.Str s
                        ? s.value()
                        : "")
            .orElse("");
    return new FactType.Amount(minimum.orElse(0.0), maximum.orElse(0.0), decimals, unit);
  }

  private List<Option> options(List<JsonValue> values) {
    List<Option> options = new ArrayList<>();
    for (JsonValue value : values) {
      Optional<ObjectReading> in = ObjectReading.of(value, problems);
      if (in.isPresent()) {
        option(in.get()).ifPresent(options::add);
        in.get().finish();
      }
    }
    return options;
  }

  private Optional<Option> option(ObjectReading in) {
    FhirExtensions extensions =
        new FhirExtensions(in.optionalList("extension"), problems).checkAddresses();
    if (in.optional("initialSelected").isPresent()) {
      problems.add(
          Problem.error(
              in.where(),
              "unknown-key",
              "No answer is chosen in advance here.",
              "Remove initialSelected."));
    }
    Optional<ObjectReading> coding =
        in.required("valueCoding").flatMap(v -> ObjectReading.of(v, problems));
    if (coding.isEmpty()) {
      return Optional.empty();
    }
    OptionalDouble ordinal =
        extensions
            .numberOf(FhirExtensions.HL7 + "ordinalValue", "valueDecimal")
            .map(OptionalDouble::of)
            .orElse(OptionalDouble.empty());
    Option option =
        new Option(
            coding.get().text("system"),
            coding.get().text("code"),
            coding.get().text("display"),
            ordinal,
            extensions.flagOf(FhirExtensions.HL7 + "questionnaire-optionExclusive"),
            in.where());
    coding.get().finish();
    return Optional.of(option);
  }

  private Optional<TaskKind> task(ObjectReading in, FhirExtensions extensions) {
    Optional<String> word = extensions.textOf(FhirExtensions.OWN + "task", "valueCode");
    Optional<TaskKind> kind = word.flatMap(TaskKind::of);
    if (word.isPresent() && kind.isEmpty()) {
      problems.add(
          Problem.error(
              in.where(),
              "unknown-value",
              "\"" + word.get() + "\" is not a kind of task.",
              "Use timed, strength, breath or head."));
    }
    return kind;
  }

  private List<String> classification(ObjectReading in) {
    List<String> codes = new ArrayList<>();
    for (JsonValue value : in.optionalList("code")) {
      ObjectReading.of(value, problems)
          .ifPresent(
              c -> {
                c.text("system");
                codes.add(c.text("code"));
                c.optionalText("display");
                c.finish();
              });
    }
    return codes;
  }
}
