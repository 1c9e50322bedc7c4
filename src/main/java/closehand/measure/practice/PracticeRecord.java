package closehand.measure.practice;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A practice run as it is kept with a case.
 *
 * @param at when, as an ISO date and time with zone
 * @param game which game, counted from 0
 * @param week weeks with the plan, from 1
 * @param timed whether times were taken; a log or a line of typing may have none
 * @param signals what each input sent, by its id
 * @param tries what came of each prompt
 * @param stop why it ended early, where it did
 * @param taken changes that the player took after it: an action's id and its new input's
 */
public record PracticeRecord(
    String at,
    int game,
    int week,
    boolean timed,
    Map<String, Signal> signals,
    List<Try> tries,
    Optional<StopReason> stop,
    Map<String, String> taken) {
  /** The most runs that are looked at together; older ones are of another time. */
  public static final int MOST_TOGETHER = 5;

  /** Copies the map and the list. */
  public PracticeRecord {
    signals = java.util.Collections.unmodifiableMap(new LinkedHashMap<>(signals));
    tries = List.copyOf(tries);
    taken = java.util.Collections.unmodifiableMap(new LinkedHashMap<>(taken));
  }

  /** The day, as an ISO date. */
  public String day() {
    return at.length() >= 10 ? at.substring(0, 10) : at;
  }

  /** The same with changes that were taken after it. */
  public PracticeRecord taking(Map<String, String> changes) {
    Map<String, String> all = new LinkedHashMap<>(taken);
    all.putAll(changes);
    return new PracticeRecord(at, game, week, timed, signals, tries, stop, all);
  }

  /** Every change taken in a game, a later one in place of an earlier. */
  public static Map<String, String> taken(List<PracticeRecord> all, int game) {
    Map<String, String> taken = new LinkedHashMap<>();
    all.stream().filter(r -> r.game() == game).forEach(r -> taken.putAll(r.taken()));
    return taken;
  }

  /** What the latest runs of a game tell together. */
  public static Findings findings(List<PracticeRecord> all, int game) {
    List<List<Try>> runs =
        all.stream().filter(r -> r.game() == game).map(PracticeRecord::tries).toList();
    return Reckoning.together(runs.subList(Math.max(0, runs.size() - MOST_TOGETHER), runs.size()));
  }
}
