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
 * @param used whether the plan is to be made with it
 */
public record PracticeRecord(
    String at,
    int game,
    int week,
    boolean timed,
    Map<String, Signal> signals,
    List<Try> tries,
    Optional<StopReason> stop,
    boolean used) {
  /** The most runs that are looked at together; older ones are of another time. */
  public static final int MOST_TOGETHER = 5;

  /** Copies the map and the list. */
  public PracticeRecord {
    signals = java.util.Collections.unmodifiableMap(new LinkedHashMap<>(signals));
    tries = List.copyOf(tries);
  }

  /** The day, as an ISO date. */
  public String day() {
    return at.length() >= 10 ? at.substring(0, 10) : at;
  }

  /** The same with another word on whether the plan is made with it. */
  public PracticeRecord used(boolean now) {
    return new PracticeRecord(at, game, week, timed, signals, tries, stop, now);
  }

  /** What the latest runs of a game tell together, whether or not plans use them. */
  public static Findings findings(List<PracticeRecord> all, int game) {
    List<List<Try>> runs =
        all.stream().filter(r -> r.game() == game).map(PracticeRecord::tries).toList();
    return Reckoning.together(
        runs.subList(Math.max(0, runs.size() - MOST_TOGETHER), runs.size()));
  }
}
