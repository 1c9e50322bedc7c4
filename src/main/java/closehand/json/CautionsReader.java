package closehand.json;

import closehand.bank.Caution;
import closehand.bank.CautionClass;
import closehand.bank.Hint;
import closehand.bank.Problem;
import closehand.bank.Source;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

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
    in.text("class");
    List<CautionClass> classes = new ArrayList<>();
    for (String word : in.texts("classes")) {
      CautionClass.of(word).ifPresentOrElse(classes::add, () -> unknownClass(in, word));
    }
    Caution caution =
        new Caution(
            code,
            classes,
            in.flag("lowerable", true),
            in.text("title"),
            in.text("message"),
            in.texts("actions"),
            in.optionalText("clinician").orElse(""),
            in.optionalText("contact").orElse(""),
            in.where());
    in.finish();
    return caution;
  }

  private void unknownClass(ObjectReading in, String word) {
    List<String> known = Arrays.stream(CautionClass.values()).map(CautionClass::code).toList();
    problems.add(
        Problem.error(
            in.where(),
            "unknown-level",
            "\"" + word + "\" is not a class of caution.",
            Hint.didYouMean(word, known)));
  }

  /** The published sources, then the bases that are no source. */
  List<Source> sources(JsonValue value) {
    List<Source> sources = new ArrayList<>();
    Optional<ObjectReading> in = ObjectReading.of(value, problems);
    if (in.isPresent()) {
      for (JsonValue item : in.get().list("sources")) {
        ObjectReading.of(item, problems)
            .ifPresent(
                s -> {
                  sources.add(
                      new Source(
                          s.text("id"), s.text("usedFor"), s.text("where"), s.text("status")));
                  s.finish();
                });
      }
      for (JsonValue item : in.get().list("bases")) {
        ObjectReading.of(item, problems)
            .ifPresent(
                b -> {
                  sources.add(
                      new Source(b.text("id"), b.text("text"), "", "not a published source"));
                  b.finish();
                });
      }
      in.get().finish();
    }
    return sources;
  }
}
