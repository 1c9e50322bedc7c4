package closehand.json;

import closehand.bank.Hint;
import closehand.bank.Problem;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** The extensions of one item of a questionnaire: HL7's own and this project's. */
final class FhirExtensions {
  static final String OWN = "http://closehand.invalid/fhir/StructureDefinition/";
  static final String HL7 = "http://hl7.org/fhir/StructureDefinition/";

  private static final List<String> KNOWN =
      List.of(
          OWN + "remote-text",
          OWN + "short-name",
          OWN + "asked-by",
          OWN + "safety-weight",
          OWN + "path",
          OWN + "task",
          OWN + "repeat-safety",
          HL7 + "designNote",
          HL7 + "minValue",
          HL7 + "maxValue",
          HL7 + "maxDecimalPlaces",
          HL7 + "questionnaire-unit",
          HL7 + "questionnaire-itemControl",
          HL7 + "questionnaire-optionExclusive",
          HL7 + "questionnaire-supportLink",
          HL7 + "ordinalValue",
          HL7 + "entryFormat");

  private static final Set<String> AVOIDED =
      Set.of(
          HL7 + "questionnaire-displayCategory",
          HL7 + "questionnaire-minOccurs",
          HL7 + "questionnaire-maxOccurs",
          HL7 + "questionnaire-unitOption");

  private final List<JsonValue> values;
  private final List<Problem> problems;

  FhirExtensions(List<JsonValue> values, List<Problem> problems) {
    this.values = values;
    this.problems = problems;
  }

  /** Reports every extension whose address is not known here. */
  FhirExtensions checkAddresses() {
    for (JsonValue value : values) {
      String url = text(value, "url");
      if (AVOIDED.contains(url)) {
        problems.add(
            Problem.error(
                value.where(),
                "avoided-extension",
                "This extension is read differently by different programs.",
                "Leave it out."));
      } else if (!KNOWN.contains(url)) {
        problems.add(
            Problem.error(
                value.where(),
                "unknown-extension",
                "The extension \"" + url + "\" is not known here.",
                Hint.didYouMean(url, KNOWN)));
      }
    }
    return this;
  }

  /** The value member of the extension with this address. */
  Optional<JsonValue> value(String url, String member) {
    for (JsonValue value : values) {
      if (text(value, "url").equals(url) && value instanceof JsonValue.Obj object) {
        Optional<JsonValue> found = object.member(member);
        if (found.isEmpty()) {
          problems.add(
              Problem.error(
                  value.where(), "wrong-type", "This extension needs \"" + member + "\".", ""));
        }
        return found;
      }
    }
    return Optional.empty();
  }

  Optional<String> textOf(String url, String member) {
    return value(url, member)
        .map(v -> v instanceof JsonValue.Str text ? text.value() : wrong(v, "text", ""));
  }

  /** The number, or empty where there is none. */
  Optional<Double> numberOf(String url, String member) {
    return value(url, member)
        .map(v -> v instanceof JsonValue.Num number ? number.value() : wrong(v, "a number", 0.0));
  }

  boolean flagOf(String url) {
    return value(url, "valueBoolean").orElse(null) instanceof JsonValue.Bool flag && flag.value();
  }

  private <T> T wrong(JsonValue value, String wanted, T instead) {
    ObjectReading.wrongType(value, wanted, problems);
    return instead;
  }

  private static String text(JsonValue value, String name) {
    return value instanceof JsonValue.Obj object
            && object.member(name).orElse(null) instanceof JsonValue.Str text
        ? text.value()
        : "";
  }
}
