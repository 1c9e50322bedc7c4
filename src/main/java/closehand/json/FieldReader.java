package closehand.json;

import closehand.bank.EnableWhen;
import closehand.bank.FactType;
import closehand.bank.Field;
import closehand.bank.Option;
import closehand.bank.Problem;
import closehand.bank.Where;
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
  private static final int MOST_DECIMALS = 6;

  private final List<Problem> problems;

  FieldReader(List<Problem> problems) {
    this.problems = problems;
  }

  /**
   * Reads a question item.
   *
   * @param in the item; its children have been read already
   * @param fact its link id
   * @param around the conditions of the groups around it
   * @param groups the link ids of those groups
   */
  Field read(
      ObjectReading in,
      String fact,
      List<EnableWhen> around,
      List<String> groups,
      FhirExtensions extensions) {
    String text = in.text("text");
    String type = in.text("type");
    boolean repeats = in.flag("repeats", false);
    List<EnableWhen> conditions = new ArrayList<>(around);
    EnableWhenReader.read(in, problems).ifPresent(conditions::add);
    unused(in);
    return new Field(
        fact,
        text,
        extensions.textOf(FhirExtensions.OWN + "remote-text"),
        extensions.textOf(FhirExtensions.OWN + "alone-text"),
        type(in, type, repeats, extensions),
        in.flag("required", false),
        conditions,
        groups,
        new QuestionWords(extensions, problems).task(),
        extensions.flagOf(FhirExtensions.OWN + "repeat-safety"),
        classification(in),
        in.where());
  }

  /** Members that HL7 allows and this project does not use. */
  private void unused(ObjectReading in) {
    if (in.optional("initial").isPresent()) {
      note(
          in.where("initial"),
          "unknown-key",
          "No answer is filled in beforehand here.",
          "Remove \"initial\".");
    }
    if (in.optional("answerValueSet").isPresent()) {
      note(
          in.where("answerValueSet"),
          "unknown-key",
          "Answers are not taken from a value set here.",
          "Write each as an answerOption.");
    }
  }

  private FactType type(ObjectReading in, String type, boolean repeats, FhirExtensions extensions) {
    List<Option> options = options(in.optionalList("answerOption"));
    int length =
        in.optional("maxLength").isPresent() ? in.whole("maxLength", 1, 16_384) : DEFAULT_WORDS;
    if (repeats && !type.equals("choice") && !type.equals("string")) {
      note(
          in.where("repeats"),
          "wrong-type",
          "Only choice and string items may repeat.",
          "Remove \"repeats\".");
    }
    if (!options.isEmpty() && !type.equals("choice") && known(type)) {
      note(
          in.where("answerOption"),
          "wrong-type",
          "Only a choice has answers to pick from.",
          "Make the type \"choice\", or remove answerOption.");
    }
    return switch (type) {
      case "boolean" -> new FactType.YesNo();
      case "integer" -> amount(in, extensions, "valueInteger", 0);
      case "decimal" -> amount(in, extensions, "valueDecimal", decimals(extensions));
      case "choice" -> repeats ? new FactType.SeveralOf(options) : new FactType.OneOf(options);
      case "text" -> new FactType.Words(length);
      case "string" -> repeats ? new FactType.WordList() : new FactType.Words(length);
      default -> unknownType(in, type);
    };
  }

  private static boolean known(String type) {
    return List.of("boolean", "integer", "decimal", "text", "string").contains(type);
  }

  private FactType unknownType(ObjectReading in, String type) {
    if (!type.isEmpty()) {
      note(
          in.where("type"),
          "unknown-type",
          "\"" + type + "\" is not a type of question used here.",
          "Use boolean, integer, decimal, choice, text or string.");
    }
    return new FactType.Words(DEFAULT_WORDS);
  }

  private int decimals(FhirExtensions extensions) {
    String url = FhirExtensions.HL7 + "maxDecimalPlaces";
    double decimals = extensions.numberOf(url).orElse(1.0);
    if (decimals < 1 || decimals > MOST_DECIMALS) {
      extensions
          .value(url)
          .ifPresent(
              v ->
                  note(
                      v.where(),
                      "out-of-range",
                      "Decimal places are from 1 to " + MOST_DECIMALS + ".",
                      "Use the type integer for whole numbers."));
    }
    return (int) Math.max(1, Math.min(MOST_DECIMALS, decimals));
  }

  private FactType amount(
      ObjectReading in, FhirExtensions extensions, String member, int decimals) {
    String low = FhirExtensions.HL7 + "minValue";
    String high = FhirExtensions.HL7 + "maxValue";
    Optional<Double> minimum = extensions.numberOf(low);
    Optional<Double> maximum = extensions.numberOf(high);
    for (String url : List.of(low, high)) {
      extensions
          .whereNot(url, member)
          .ifPresent(w -> note(w, "wrong-type", "This type of question needs " + member + ".", ""));
    }
    if (extensions.value(low).isEmpty() || extensions.value(high).isEmpty()) {
      note(
          in.where(),
          "missing",
          "A number needs its smallest and largest value.",
          "Add minValue and maxValue.");
    } else if (minimum.orElse(0.0) > maximum.orElse(Double.MAX_VALUE)) {
      note(
          extensions.value(low).map(JsonValue::where).orElse(in.where()),
          "out-of-range",
          "minValue is above maxValue.",
          "Swap them?");
    }
    double lowest = minimum.orElse(0.0);
    return new FactType.Amount(
        lowest, Math.max(lowest, maximum.orElse(lowest)), decimals, unit(extensions));
  }

  private String unit(FhirExtensions extensions) {
    Optional<JsonValue> coding = extensions.value(FhirExtensions.HL7 + "questionnaire-unit");
    if (!(coding.orElse(null) instanceof JsonValue.Obj object)) {
      return "";
    }
    ObjectReading in = new ObjectReading(object, problems);
    in.text("system");
    String code = in.text("code");
    in.optionalText("display");
    in.finish();
    return code;
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
    FhirExtensions extensions = new FhirExtensions(in.optionalList("extension"), problems).check();
    if (in.optional("initialSelected").isPresent()) {
      note(
          in.where("initialSelected"),
          "unknown-key",
          "No answer is chosen beforehand here.",
          "Remove \"initialSelected\".");
    }
    Optional<ObjectReading> coding =
        in.required("valueCoding").flatMap(v -> ObjectReading.of(v, problems));
    if (coding.isEmpty()) {
      return Optional.empty();
    }
    OptionalDouble ordinal =
        extensions
            .numberOf(FhirExtensions.HL7 + "ordinalValue")
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

  private void note(Where where, String code, String what, String mend) {
    problems.add(Problem.error(where, code, what, mend));
  }
}
