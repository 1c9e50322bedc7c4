package closehand.json;

import closehand.bank.Problem;
import closehand.interview.Measured;
import closehand.interview.Provenance;
import closehand.interview.Value;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Reads a measured task as a case keeps it. */
final class MeasuredReader {
  private static final int MOST_MINUTES = 1_000_000;
  private static final int MOST_SECONDS = 100_000;

  private final List<Problem> problems;

  MeasuredReader(List<Problem> problems) {
    this.problems = problems;
  }

  Optional<Measured> read(ObjectReading in) {
    String at = in.text("at");
    Optional<Provenance.By> by = Provenance.By.of(in.text("by"));
    Optional<Measured.Ending> ending = Measured.Ending.of(in.text("ending"));
    if (by.isEmpty() || ending.isEmpty() || !CaseReader.isInstant(at)) {
      problems.add(
          Problem.error(in.where(), "unknown-value", "This measured task cannot be read.", ""));
      return Optional.empty();
    }
    return Optional.of(
        new Measured(
            at,
            in.text("task"),
            in.optionalText("place").orElse(""),
            by.get(),
            new Measured.Circumstances(
                in.text("setting"),
                in.text("posture"),
                in.text("support"),
                in.text("partOfDay"),
                in.whole("minutesIn", 0, MOST_MINUTES)),
            in.flag("keys", false),
            goes(in),
            in.whole("timedSeconds", 0, MOST_SECONDS),
            ending.get(),
            in.optionalText("stop").orElse(""),
            in.optionalTexts("facts")));
  }

  private List<Measured.Go> goes(ObjectReading in) {
    List<Measured.Go> goes = new ArrayList<>();
    for (JsonValue value : in.optionalList("goes")) {
      ObjectReading.of(value, problems)
          .ifPresent(
              go ->
                  goes.add(
                      new Measured.Go(
                          go.flag("practice", false),
                          go.optionalText("discarded").orElse(""),
                          values(go))));
    }
    return goes;
  }

  private Map<String, Value> values(ObjectReading in) {
    Map<String, Value> values = new LinkedHashMap<>();
    if (in.optional("values").orElse(null) instanceof JsonValue.Obj object) {
      for (JsonValue.Member member : object.members()) {
        RecordReader.value(member.value(), problems).ifPresent(v -> values.put(member.name(), v));
      }
    }
    return values;
  }
}
