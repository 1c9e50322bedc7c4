package closehand.json;

import closehand.bank.Problem;
import closehand.measure.practice.PracticeRecord;
import closehand.measure.practice.Signal;
import closehand.measure.practice.StopReason;
import closehand.measure.practice.Try;
import closehand.measure.trial.Day;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;

/** Reads practice runs out of the room of trials; anything else in it is passed over. */
public final class PracticeReader {
  private static final int MOST_GAMES = 20;
  private static final int MOST_WEEKS = 5_200;
  private static final int MOST_ROUNDS = 1_000;
  private static final int HOUR = 3_600_000;

  private PracticeReader() {}

  /**
   * All practice runs, the oldest first. One that cannot be read is left out.
   *
   * @param problems receives whatever is wrong
   */
  public static List<PracticeRecord> read(List<JsonValue.Obj> trials, List<Problem> problems) {
    List<PracticeRecord> records = new ArrayList<>();
    for (JsonValue.Obj trial : trials) {
      if (isOfKind(trial, PracticeWriter.KIND)) {
        List<Problem> found = new ArrayList<>();
        PracticeRecord record = record(new ObjectReading(trial, found));
        if (!Problem.anyError(found)) {
          records.add(record);
        }
        problems.addAll(found);
      }
    }
    return records;
  }

  static boolean isOfKind(JsonValue.Obj trial, String wanted) {
    return trial.member("kind").orElse(null) instanceof JsonValue.Str kind
        && kind.value().equals(wanted);
  }

  /** When it was; what is no moment is wrong, since limits and stops hold for a day. */
  static String moment(ObjectReading in) {
    String at = in.text("at");
    if (!at.isEmpty() && Day.ofMoment(at).isEmpty()) {
      wrong(in, "at", "\"at\" is no moment such as 2026-12-01T10:00:00Z.");
    }
    return at;
  }

  /** What ended it; a name that is not known is wrong, and never taken for no stop. */
  static Optional<StopReason> stop(ObjectReading in) {
    Optional<String> name = in.optionalText("stopped");
    Optional<StopReason> stop = name.flatMap(StopReason::named);
    if (name.isPresent() && stop.isEmpty()) {
      wrong(in, "stopped", "\"stopped\" is no stop sign that is known here.");
    }
    return stop;
  }

  private static void wrong(ObjectReading in, String name, String what) {
    in.problems().add(Problem.error(in.where(name), "bad-practice", what, ""));
  }

  private static PracticeRecord record(ObjectReading in) {
    List<Try> tries = new ArrayList<>();
    for (JsonValue value : in.list("tries")) {
      ObjectReading.of(value, in.problems()).ifPresent(t -> tries.add(one(t)));
    }
    PracticeRecord record =
        new PracticeRecord(
            moment(in),
            in.whole("game", 0, MOST_GAMES),
            in.whole("week", 1, MOST_WEEKS),
            in.flag("timed", true),
            signals(in),
            tries,
            stop(in),
            taken(in));
    return in.optional("timedSeconds").isPresent()
        ? record.timed(in.whole("timedSeconds", 0, HOUR / 1_000))
        : record;
  }

  private static Map<String, String> taken(ObjectReading in) {
    Map<String, String> taken = new LinkedHashMap<>();
    if (in.optional("taken").orElse(null) instanceof JsonValue.Obj all) {
      for (JsonValue.Member member : all.members()) {
        if (member.value() instanceof JsonValue.Str input) {
          taken.put(member.name(), input.value());
        } else {
          ObjectReading.wrongType(member.value(), "the id of an input", in.problems());
        }
      }
    }
    return taken;
  }

  private static Map<String, Signal> signals(ObjectReading in) {
    Map<String, Signal> signals = new LinkedHashMap<>();
    if (in.optional("signals").orElse(null) instanceof JsonValue.Obj all) {
      for (JsonValue.Member member : all.members()) {
        Optional<Signal> signal =
            member.value() instanceof JsonValue.Str text
                ? Signal.of(text.value())
                : Optional.empty();
        signal.ifPresentOrElse(
            s -> signals.put(member.name(), s),
            () -> ObjectReading.wrongType(member.value(), "what an input sends", in.problems()));
      }
    }
    return signals;
  }

  private static Try one(ObjectReading in) {
    boolean hit = in.flag("hit", false);
    OptionalLong millis =
        in.optional("millis").isPresent()
            ? OptionalLong.of(in.whole("millis", 0, HOUR))
            : OptionalLong.empty();
    return new Try(
        in.whole("round", 0, MOST_ROUNDS),
        in.text("action"),
        in.text("input"),
        hit,
        hit ? millis : OptionalLong.empty(),
        in.optionalText("wrong"),
        in.flag("beside", false),
        new Try.Marks(in.flag("held", false), in.flag("bounced", false), in.flag("along", false)));
  }
}
