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
 * @param timedSeconds timed work
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
    int timedSeconds,
    Map<String, String> taken) {
  /** The gap before a prompt, and a press that was not timed, taken to last so long. */
  private static final double GAP_SECONDS = 1.6;

  /** So many presses with the same times are no accident. */
  private static final int ENOUGH_TO_TELL = 5;

  private static final double THOUSAND = 1_000;

  /** The most runs that are looked at together; older ones are of another time. */
  public static final int MOST_TOGETHER = 5;

  /** Copies the map and the list. */
  public PracticeRecord {
    signals = java.util.Collections.unmodifiableMap(new LinkedHashMap<>(signals));
    tries = List.copyOf(tries);
    taken = java.util.Collections.unmodifiableMap(new LinkedHashMap<>(taken));
  }

  /**
   * A run of which nobody took down how long it was worked; that is then taken from its presses and
   * the usual gaps between them.
   */
  public PracticeRecord(
      String at,
      int game,
      int week,
      boolean timed,
      Map<String, Signal> signals,
      List<Try> tries,
      Optional<StopReason> stop,
      Map<String, String> taken) {
    this(at, game, week, timed, signals, tries, stop, worked(tries), taken);
  }

  private static int worked(List<Try> tries) {
    return (int)
        Math.ceil(
            tries.stream()
                .mapToDouble(
                    t ->
                        GAP_SECONDS + t.millis().orElse((long) (GAP_SECONDS * THOUSAND)) / THOUSAND)
                .sum());
  }

  /** The same after so much timed work. */
  public PracticeRecord timed(int seconds) {
    return new PracticeRecord(at, game, week, timed, signals, tries, stop, seconds, taken);
  }

  /** The day, as an ISO date. */
  public String day() {
    return at.length() >= 10 ? at.substring(0, 10) : at;
  }

  /**
   * Whether these tries hold the same presses as this run's: the same prompts in the same order,
   * answered after the same times, as far as both go; a log that was written on holds those of
   * before. A plan that was changed in between judges some of them differently, so only times that
   * both have are set side by side.
   */
  public boolean hasPressesOf(List<Try> others) {
    int common = Math.min(tries.size(), others.size());
    boolean same = tries.size() == others.size() || common >= ENOUGH_TO_TELL;
    boolean times = false;
    for (int i = 0; same && i < common; i++) {
      Try mine = tries.get(i);
      Try other = others.get(i);
      boolean both = mine.millis().isPresent() && other.millis().isPresent();
      times |= both;
      same =
          mine.round() == other.round()
              && mine.action().equals(other.action())
              && (!both || mine.millis().equals(other.millis()));
    }
    return same && (times || tries.equals(others));
  }

  /** The same with changes that were taken after it. */
  public PracticeRecord taking(Map<String, String> changes) {
    Map<String, String> all = new LinkedHashMap<>(taken);
    all.putAll(changes);
    return new PracticeRecord(at, game, week, timed, signals, tries, stop, timedSeconds, all);
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
