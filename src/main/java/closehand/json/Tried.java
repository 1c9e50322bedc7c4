package closehand.json;

import closehand.bank.Problem;
import closehand.measure.practice.PointingRecord;
import closehand.measure.practice.PracticeRecord;
import closehand.measure.trial.Day;
import closehand.measure.trial.Trial;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Everything in the room of trials of a case, each read as what it says it is. What cannot be read
 * is told too, since it may hide that something was stopped.
 *
 * @param unread the day of each thing that cannot be read, an ISO date; empty where not even that
 *     can be read
 */
public record Tried(
    List<Trial> trials,
    List<PracticeRecord> practice,
    List<PointingRecord> pointing,
    List<String> unread) {
  /** Takes copies. */
  public Tried {
    trials = List.copyOf(trials);
    practice = List.copyOf(practice);
    pointing = List.copyOf(pointing);
    unread = List.copyOf(unread);
  }

  /** What these objects hold, in order. */
  public static Tried of(List<JsonValue.Obj> objects) {
    List<Trial> trials = new ArrayList<>();
    List<PracticeRecord> practice = new ArrayList<>();
    List<PointingRecord> pointing = new ArrayList<>();
    List<String> unread = new ArrayList<>();
    for (JsonValue.Obj object : objects) {
      List<Problem> problems = new ArrayList<>();
      int before = trials.size() + practice.size() + pointing.size();
      TrialReader.read(List.of(object), problems).forEach(trials::add);
      PracticeReader.read(List.of(object), problems).forEach(practice::add);
      PointingReader.read(List.of(object), problems).forEach(pointing::add);
      if (trials.size() + practice.size() + pointing.size() == before) {
        unread.add(day(object));
      }
    }
    return new Tried(trials, practice, pointing, unread);
  }

  private static String day(JsonValue.Obj object) {
    return text(object, "day")
        .flatMap(Day::of)
        .or(() -> text(object, "at").flatMap(Day::ofMoment))
        .map(Day::iso)
        .orElse("");
  }

  private static Optional<String> text(JsonValue.Obj object, String name) {
    return object.member(name).orElse(null) instanceof JsonValue.Str text
        ? Optional.of(text.value())
        : Optional.empty();
  }
}
