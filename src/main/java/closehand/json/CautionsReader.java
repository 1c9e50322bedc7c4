package closehand.json;

import closehand.bank.Caution;
import closehand.bank.CautionClass;
import closehand.bank.Hint;
import closehand.bank.Problem;
import closehand.bank.Source;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Reads the cautions and the sources. */
final class CautionsReader {
  private final List<Problem> problems;

  CautionsReader(List<Problem> problems) {
    this.problems = problems;
  }

  List<Caution> cautions(JsonValue value) {
    List<Caution> cautions = new ArrayList<>();
    Optional<ObjectReading> in = ObjectReading.of(value, problems);
    if (in.isPresent()) {
      for (JsonValue item : in.get().list("cautions")) {
        ObjectReading.of(item, problems).ifPresent(c -> cautions.add(caution(c)));
      }
      in.get().finish();
    }
    return cautions;
  }

  private Caution caution(ObjectReading in) {
    String code = in.text("code");
    String usual = in.text("class");
    List<CautionClass> classes = new ArrayList<>();
    int before = problems.size();
    for (JsonValue value : in.list("classes")) {
      if (value instanceof JsonValue.Str word) {
        CautionClass.of(word.value()).ifPresentOrElse(classes::add, () -> unknownClass(word));
      } else {
        ObjectReading.wrongType(value, "a class of caution", problems);
      }
    }
    boolean read = problems.size() == before && !classes.isEmpty();
    if (read && !usual.isBlank() && classes.stream().noneMatch(c -> c.code().equals(usual))) {
      problems.add(
          Problem.error(
              in.where("class"),
              "unknown-level",
              "The usual class \"" + usual + "\" is not among this caution's classes.",
              "Make it one of \"classes\"."));
    }
    Caution caution =
        new Caution(
            code,
            classes,
            in.flag("lowerable", true),
            in.flag("bindsClinicians", true),
            in.text("title"),
            in.text("message"),
            in.texts("actions"),
            in.optionalText("clinician").orElse(""),
            in.optionalText("contact").orElse(""),
            variants(in),
            in.optionalTexts("keep"),
            in.optionalText("short").orElse(""),
            in.where());
    in.finish();
    return caution;
  }

  private List<Caution.Variant> variants(ObjectReading in) {
    List<Caution.Variant> variants = new ArrayList<>();
    for (JsonValue value : in.optionalList("variants")) {
      Optional<ObjectReading> one = ObjectReading.of(value, problems);
      if (one.isPresent()) {
        variant(one.get()).ifPresent(variants::add);
      }
    }
    return variants;
  }

  private Optional<Caution.Variant> variant(ObjectReading in) {
    Optional<JsonValue> word = in.required("class");
    Optional<CautionClass> kind =
        word.flatMap(
            w -> w instanceof JsonValue.Str t ? CautionClass.of(t.value()) : Optional.empty());
    if (kind.isEmpty() && word.orElse(null) instanceof JsonValue.Str other) {
      unknownClass(other);
    }
    String title = in.text("title");
    String message = in.text("message");
    List<String> actions = in.texts("actions");
    String contact = in.text("contact");
    String brief = in.optionalText("short").orElse("");
    in.finish();
    return kind.map(k -> new Caution.Variant(k, title, message, actions, contact, brief));
  }

  private void unknownClass(JsonValue.Str word) {
    List<String> known = Arrays.stream(CautionClass.values()).map(CautionClass::code).toList();
    problems.add(
        Problem.error(
            word.where(),
            "unknown-level",
            "\""
                + word.value()
                + "\" is not a class of caution ("
                + String.join(", ", known)
                + ").",
            Hint.didYouMean(word.value(), known)));
  }

  /** The published sources, then the bases that are no source. */
  List<Source> sources(JsonValue value) {
    List<Source> sources = new ArrayList<>();
    Set<String> ids = new HashSet<>();
    Optional<ObjectReading> in = ObjectReading.of(value, problems);
    if (in.isPresent()) {
      for (JsonValue item : in.get().list("sources")) {
        ObjectReading.of(item, problems)
            .ifPresent(
                s -> {
                  String id = id(s, ids);
                  sources.add(new Source(id, s.text("usedFor"), s.text("where"), s.text("status")));
                  s.finish();
                });
      }
      for (JsonValue item : in.get().list("bases")) {
        ObjectReading.of(item, problems)
            .ifPresent(
                b -> {
                  String id = id(b, ids);
                  sources.add(new Source(id, b.text("text"), "", "not a published source"));
                  b.finish();
                });
      }
      in.get().finish();
    }
    return sources;
  }

  private String id(ObjectReading in, Set<String> ids) {
    String id = in.text("id");
    if (!id.isEmpty() && !ids.add(id)) {
      problems.add(
          Problem.error(
              in.where("id"),
              "duplicate-id",
              "The source \"" + id + "\" stands here for the second time.",
              "Choose another id."));
    }
    return id;
  }
}
