package closehand.json;

import closehand.bank.Problem;
import closehand.bank.StopSign;
import closehand.measure.trial.Day;
import closehand.measure.trial.Felt;
import closehand.measure.trial.SetUp;
import closehand.measure.trial.Trial;
import closehand.measure.trial.Tries;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * Reads the trials of a case. What is wrong in one is collected; such a trial is left out of
 * everything that is worked out, and stays in the case as it is.
 */
public final class TrialReader {
  private static final int LONGEST_NAME = 200;
  private static final int LONGEST_NOTE = 5_000;

  private final List<Problem> problems;

  private TrialReader(List<Problem> problems) {
    this.problems = problems;
  }

  /**
   * The trials that can be read, in order.
   *
   * @param problems receives whatever is wrong
   */
  public static List<Trial> read(List<JsonValue.Obj> objects, List<Problem> problems) {
    List<Trial> trials = new ArrayList<>();
    for (JsonValue.Obj object : objects) {
      if (!isOfOtherFormat(object)) {
        one(object, problems).ifPresent(trials::add);
      }
    }
    return trials;
  }

  /** The place of the last trial in the room, which holds things of other formats too. */
  public static OptionalInt lastPlace(List<JsonValue.Obj> objects) {
    for (int i = objects.size() - 1; i >= 0; i--) {
      if (!isOfOtherFormat(objects.get(i))) {
        return OptionalInt.of(i);
      }
    }
    return OptionalInt.empty();
  }

  private static boolean isOfOtherFormat(JsonValue.Obj object) {
    if (object.member("format").orElse(null) instanceof JsonValue.Str format) {
      return !format.value().equals(TrialWriter.FORMAT);
    }
    // Practice runs say what they are by their kind.
    return object.member("kind").isPresent();
  }

  /** One trial; empty when any error was found in it. */
  static Optional<Trial> one(JsonValue.Obj object, List<Problem> problems) {
    List<Problem> found = new ArrayList<>();
    Trial trial = new TrialReader(found).trial(new ObjectReading(object, found));
    problems.addAll(found);
    return Problem.anyError(found) ? Optional.empty() : Optional.of(trial);
  }

  private Trial trial(ObjectReading in) {
    if (!in.optionalText("format").orElse("").equals(TrialWriter.FORMAT)) {
      wrong(in, "format", "This is no trial that can be read here.");
    }
    if (in.whole("version", 1, 1_000) > TrialWriter.VERSION) {
      wrong(in, "version", "This trial was kept by a newer version of the program.");
    }
    String day = in.text("day");
    check(in, "day", Day.of(day).isPresent(), "\"day\" is no date such as 2026-12-01.");
    boolean done = in.flag("done", false);
    Optional<String> place = in.optionalText("place");
    Optional<Trial.Where> where = place.flatMap(Trial.Where::of);
    check(in, "place", place.isPresent() == where.isPresent(), "\"place\" is home or together.");
    Optional<String> backOn = in.optionalText("backOn");
    check(
        in,
        "backOn",
        backOn.map(d -> Day.of(d).isPresent()).orElse(true),
        "\"backOn\" is no date such as 2026-12-31.");
    Trial trial =
        new Trial(
            day,
            setUp(in),
            new Trial.Scene(words(in, "game", LONGEST_NAME), words(in, "scene", LONGEST_NAME)),
            new Trial.Place(where, backOn),
            actions(in),
            felt(in, "before"),
            number(in, "painAfterFiveMinutes", Felt.MOST),
            felt(in, "after"),
            number(in, "minutes", Trial.LONGEST_MINUTES),
            number(in, "satisfaction", Felt.MOST),
            words(in, "notes", LONGEST_NOTE),
            in.optionalText("stopped").flatMap(s -> stop(in, s)),
            done);
    in.finish();
    return trial;
  }

  private Optional<StopSign> stop(ObjectReading in, String code) {
    Optional<StopSign> sign = StopSign.named(code);
    check(in, "stopped", sign.isPresent(), "\"stopped\" is no stop sign that is known here.");
    return sign;
  }

  private SetUp setUp(ObjectReading trial) {
    Optional<ObjectReading> in = inner(trial, "setUp");
    if (in.isEmpty()) {
      return SetUp.named("");
    }
    String name = words(in.get(), "name", LONGEST_NAME);
    OptionalInt minutes = number(in.get(), "minutesToSetUp", Trial.LONGEST_MINUTES);
    Optional<String> cost = in.get().optionalText("cost");
    Optional<String> weight = in.get().optionalText("weight");
    Optional<SetUp.Cost> known = cost.flatMap(SetUp.Cost::of);
    Optional<SetUp.Weight> knownWeight = weight.flatMap(SetUp.Weight::of);
    check(in.get(), "cost", cost.isPresent() == known.isPresent(), "This cost is not known.");
    check(
        in.get(),
        "weight",
        weight.isPresent() == knownWeight.isPresent(),
        "This weight is not known.");
    in.get().finish();
    return new SetUp(name, minutes, known, knownWeight);
  }

  private List<Tries> actions(ObjectReading trial) {
    List<Tries> actions = new ArrayList<>();
    List<JsonValue> all = trial.optionalList("actions");
    check(
        trial,
        "actions",
        all.size() <= Trial.MOST_ACTIONS,
        "A trial counts up to " + Trial.MOST_ACTIONS + " actions.");
    for (JsonValue value : all) {
      ObjectReading.of(value, problems)
          .ifPresent(
              in -> {
                String action = in.text("action");
                OptionalInt worked = number(in, "workedOfTen", Tries.ALL);
                in.finish();
                if (!action.isBlank()) {
                  actions.add(new Tries(action, worked));
                }
              });
    }
    check(
        trial,
        "actions",
        actions.stream().map(Tries::action).distinct().count() == actions.size(),
        "An action stands here twice.");
    return actions;
  }

  private Felt felt(ObjectReading trial, String name) {
    Optional<ObjectReading> in = inner(trial, name);
    if (in.isEmpty()) {
      return Felt.UNSAID;
    }
    Felt felt =
        new Felt(
            number(in.get(), "pain", Felt.MOST),
            number(in.get(), "effort", Felt.MOST),
            number(in.get(), "tiredness", Felt.MOST));
    in.get().finish();
    return felt;
  }

  private Optional<ObjectReading> inner(ObjectReading in, String name) {
    return in.optional(name).flatMap(v -> ObjectReading.of(v, problems));
  }

  private OptionalInt number(ObjectReading in, String name, int most) {
    if (in.optional(name).isEmpty()) {
      return OptionalInt.empty();
    }
    return OptionalInt.of(in.whole(name, 0, most));
  }

  private String words(ObjectReading in, String name, int longest) {
    String text = in.optionalText(name).orElse("");
    check(in, name, text.length() <= longest, "\"" + name + "\" is too long.");
    return text;
  }

  private void check(ObjectReading in, String name, boolean fits, String what) {
    if (!fits) {
      wrong(in, name, what);
    }
  }

  private void wrong(ObjectReading in, String name, String what) {
    problems.add(Problem.error(in.where(name), "bad-trial", what, ""));
  }
}
