package closehand.json;

import closehand.bank.Hint;
import closehand.bank.Problem;
import closehand.bank.Where;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;

/** The extensions of one item of a questionnaire: HL7's own and this project's. */
final class FhirExtensions {
  static final String OWN = "http://closehand.invalid/fhir/StructureDefinition/";
  static final String HL7 = "http://hl7.org/fhir/StructureDefinition/";

  /** Address and value of every extension that means something here. */
  private static final Map<String, List<String>> KNOWN = known();

  private static final Set<String> AVOIDED =
      Set.of(
          HL7 + "questionnaire-displayCategory",
          HL7 + "questionnaire-minOccurs",
          HL7 + "questionnaire-maxOccurs",
          HL7 + "questionnaire-unitOption");

  private static final Set<String> MAY_REPEAT =
      Set.of(HL7 + "designNote", HL7 + "questionnaire-supportLink");

  private final List<JsonValue> values;
  private final List<Problem> problems;

  FhirExtensions(List<JsonValue> values, List<Problem> problems) {
    this.values = values;
    this.problems = problems;
  }

  private static Map<String, List<String>> known() {
    Map<String, List<String>> known = new TreeMap<>();
    known.put(OWN + "remote-text", List.of("valueString"));
    known.put(OWN + "alone-text", List.of("valueString"));
    known.put(OWN + "short-name", List.of("valueString"));
    known.put(OWN + "asked-by", List.of("valueCode"));
    known.put(OWN + "safety-weight", List.of("valueInteger"));
    known.put(OWN + "path", List.of("valueCode"));
    known.put(OWN + "task", List.of("valueCode"));
    known.put(OWN + "repeat-safety", List.of("valueBoolean"));
    known.put(HL7 + "designNote", List.of("valueMarkdown"));
    known.put(HL7 + "minValue", List.of("valueInteger", "valueDecimal"));
    known.put(HL7 + "maxValue", List.of("valueInteger", "valueDecimal"));
    known.put(HL7 + "maxDecimalPlaces", List.of("valueInteger"));
    known.put(HL7 + "questionnaire-unit", List.of("valueCoding"));
    known.put(HL7 + "questionnaire-itemControl", List.of("valueCodeableConcept"));
    known.put(HL7 + "questionnaire-optionExclusive", List.of("valueBoolean"));
    known.put(HL7 + "questionnaire-supportLink", List.of("valueUri"));
    known.put(HL7 + "ordinalValue", List.of("valueDecimal"));
    known.put(HL7 + "entryFormat", List.of("valueString"));
    return known;
  }

  /** Reports every extension that is not known here, stands here twice or has a wrong value. */
  FhirExtensions check() {
    Set<String> seen = new HashSet<>();
    for (JsonValue value : values) {
      Optional<ObjectReading> in = ObjectReading.of(value, problems);
      if (in.isPresent()) {
        extension(in.get(), seen);
      }
    }
    return this;
  }

  private void extension(ObjectReading in, Set<String> seen) {
    String url = in.text("url");
    List<String> members = KNOWN.getOrDefault(url, List.of());
    if (members.isEmpty()) {
      unknown(in, url);
      return;
    }
    if (!seen.add(url) && !MAY_REPEAT.contains(url)) {
      problems.add(
          Problem.error(
              in.where("url"),
              "duplicate-extension",
              "This extension stands here twice.",
              "Keep one."));
    }
    List<JsonValue> found = new ArrayList<>();
    for (String member : members) {
      in.optional(member).ifPresent(v -> typed(member, v, found));
    }
    if (found.size() == 1) {
      in.finish();
      return;
    }
    problems.add(
        Problem.error(
            in.where(),
            "wrong-type",
            "The value of this extension is one " + String.join(" or ", members) + ".",
            "Add it, and keep no other."));
  }

  private void unknown(ObjectReading in, String url) {
    if (AVOIDED.contains(url)) {
      problems.add(
          Problem.error(
              in.where("url"),
              "avoided-extension",
              "This extension is read differently by different programs.",
              "Leave it out."));
    } else if (in.optional("url").isEmpty()) {
      problems.add(Problem.error(in.where(), "missing", "\"url\" is missing here.", "Add it."));
    } else if (!url.isBlank()) {
      problems.add(
          Problem.error(
              in.where("url"),
              "unknown-extension",
              "The extension \"" + url + "\" is not known here.",
              Hint.didYouMean(url, KNOWN.keySet())));
    }
  }

  private void typed(String member, JsonValue value, List<JsonValue> found) {
    found.add(value);
    boolean fits =
        switch (member) {
          case "valueInteger" -> value instanceof JsonValue.Num number && number.isWhole();
          case "valueDecimal" -> value instanceof JsonValue.Num;
          case "valueBoolean" -> value instanceof JsonValue.Bool;
          case "valueCoding", "valueCodeableConcept" -> value instanceof JsonValue.Obj;
          default -> value instanceof JsonValue.Str text && !text.value().isBlank();
        };
    if (!fits) {
      problems.add(
          Problem.error(
              value.where(),
              "wrong-type",
              "\"" + member + "\" should be " + wanted(member) + ".",
              ""));
    }
  }

  private static String wanted(String member) {
    return switch (member) {
      case "valueInteger" -> "a whole number";
      case "valueDecimal" -> "a number";
      case "valueBoolean" -> "true or false, without quotes";
      case "valueCoding", "valueCodeableConcept" -> "an object";
      default -> "text that says something";
    };
  }

  /** The value of the extension with this address, whatever its type. */
  Optional<JsonValue> value(String url) {
    for (JsonValue value : values) {
      if (value instanceof JsonValue.Obj object && isAddress(object, url)) {
        return KNOWN.getOrDefault(url, List.of()).stream()
            .flatMap(m -> object.member(m).stream())
            .findFirst();
      }
    }
    return Optional.empty();
  }

  /** Where the extension with this address stands, unless its value is this member. */
  Optional<Where> whereNot(String url, String member) {
    for (JsonValue value : values) {
      if (value instanceof JsonValue.Obj object
          && isAddress(object, url)
          && object.member(member).isEmpty()) {
        return Optional.of(object.where());
      }
    }
    return Optional.empty();
  }

  private static boolean isAddress(JsonValue.Obj object, String url) {
    return object.member("url").orElse(null) instanceof JsonValue.Str text
        && text.value().equals(url);
  }

  Optional<String> textOf(String url) {
    return value(url)
        .flatMap(
            v -> v instanceof JsonValue.Str text ? Optional.of(text.value()) : Optional.empty());
  }

  /**
   * The text in this member of the extension with this address, which {@link #check} need not know.
   */
  Optional<String> textOf(String url, String member) {
    for (JsonValue value : values) {
      if (value instanceof JsonValue.Obj object && isAddress(object, url)) {
        Optional<JsonValue> found = object.member(member);
        if (found.orElse(null) instanceof JsonValue.Str text) {
          return Optional.of(text.value());
        }
        problems.add(
            Problem.error(
                found.map(JsonValue::where).orElse(object.where()),
                "wrong-type",
                "This extension needs the text \"" + member + "\".",
                ""));
        return Optional.empty();
      }
    }
    return Optional.empty();
  }

  /** The number, or empty where there is none. */
  Optional<Double> numberOf(String url) {
    return value(url)
        .flatMap(v -> v instanceof JsonValue.Num num ? Optional.of(num.value()) : Optional.empty());
  }

  boolean flagOf(String url) {
    return value(url).orElse(null) instanceof JsonValue.Bool flag && flag.value();
  }
}
