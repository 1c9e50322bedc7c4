package closehand.json;

import closehand.bank.Problem;
import closehand.interview.Answer;
import closehand.interview.CaseRecord;
import closehand.interview.Consent;
import closehand.interview.Event;
import closehand.interview.Provenance;
import closehand.interview.Suggested;
import closehand.interview.Value;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** Reads what is kept of a case besides its answers; what cannot be read is left out and said. */
final class RecordReader {
  private static final int LONGEST_SITTING_SECONDS = 10_000_000;
  private static final int MOST_POINTS = 10_000;

  private final List<Problem> problems;

  RecordReader(List<Problem> problems) {
    this.problems = problems;
  }

  CaseRecord read(ObjectReading in) {
    return new CaseRecord(
        all(in, "consents", this::consent),
        all(in, "history", this::event),
        all(in, "suggested", this::suggested),
        all(in, "measured", new MeasuredReader(problems)::read),
        in.optionalText("keepUntil"),
        in.optionalText("reviewOn"));
  }

  private <T> List<T> all(
      ObjectReading in, String name, Function<ObjectReading, Optional<T>> entry) {
    List<T> all = new ArrayList<>();
    for (JsonValue value : in.optionalList(name)) {
      ObjectReading.of(value, problems).flatMap(entry).ifPresent(all::add);
    }
    return all;
  }

  private <T> Optional<T> unknown(ObjectReading in) {
    problems.add(
        Problem.error(
            in.where(), "unknown-value", "This entry of the case's record cannot be read.", ""));
    return Optional.empty();
  }

  private Optional<Consent> consent(ObjectReading in) {
    Optional<Answer> answer = answer(in, "answer");
    Optional<Provenance.By> by = Provenance.By.of(in.text("by"));
    String fact = in.text("fact");
    String at = in.text("at");
    return answer.isPresent() && by.isPresent() && CaseReader.isInstant(at)
        ? Optional.of(new Consent(fact, answer.get(), by.get(), at))
        : unknown(in);
  }

  private Optional<Event> event(ObjectReading in) {
    Optional<Event.What> what = Event.What.of(in.text("what"));
    String at = in.text("at");
    if (what.isEmpty() || !CaseReader.isInstant(at)) {
      return unknown(in);
    }
    return Optional.of(
        new Event(
            at,
            in.whole("elapsedSeconds", 0, LONGEST_SITTING_SECONDS),
            what.get(),
            in.optionalText("subject").orElse(""),
            answer(in, "from"),
            answer(in, "to"),
            in.text("by"),
            in.optionalText("why").orElse("")));
  }

  private Optional<Answer> answer(ObjectReading in, String name) {
    Optional<JsonValue> value = in.optional(name);
    if (value.isEmpty()) {
      return Optional.empty();
    }
    Optional<Answer> answer =
        value.get() instanceof JsonValue.Obj absent
            ? ObjectReading.of(absent, problems)
                .flatMap(o -> o.optionalText("absent"))
                .flatMap(Answer.Reason::of)
                .map(Answer.Absent::new)
            : value(value.get(), problems).map(Answer.Given::new);
    return answer.isPresent() ? answer : unknown(in);
  }

  /** A value as the project's own formats have it; empty if it is none. */
  static Optional<Value> value(JsonValue value, List<Problem> problems) {
    if (value instanceof JsonValue.Bool flag) {
      return Optional.of(new Value.Flag(flag.value()));
    }
    if (value instanceof JsonValue.Num number) {
      return Optional.of(new Value.Number(number.value()));
    }
    if (value instanceof JsonValue.Str text) {
      return Optional.of(new Value.Text(text.value()));
    }
    return value instanceof JsonValue.Arr list
        ? Optional.of(new Value.Texts(ObjectReading.texts(list.items(), problems)))
        : Optional.empty();
  }

  private Optional<Suggested> suggested(ObjectReading in) {
    String at = in.text("at");
    if (!CaseReader.isInstant(at)) {
      return unknown(in);
    }
    return Optional.of(
        new Suggested(
            at,
            in.text("bankVersion"),
            in.text("fingerprint"),
            in.flag("withheld", false),
            in.optionalTexts("stops"),
            in.optionalTexts("cautions"),
            all(in, "ideas", this::idea)));
  }

  private Optional<Suggested.Idea> idea(ObjectReading in) {
    return Optional.of(
        new Suggested.Idea(
            in.text("id"), in.text("title"), in.whole("points", -MOST_POINTS, MOST_POINTS)));
  }
}
