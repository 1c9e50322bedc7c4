package closehand.measure.followup;

import closehand.interview.CaseRecord;
import closehand.interview.Event;
import closehand.interview.Suggested;
import closehand.interview.WellKnown;
import closehand.measure.trial.Day;
import closehand.measure.trial.Trial;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * One thing that is due. All waits are common practice, no source.
 *
 * @param on the day from which it is due
 * @param what what is due
 */
public record Due(Day on, What what) {
  private static final int TWO_WEEKS_DAYS = 14;
  private static final int SIX_WEEKS_DAYS = 42;

  /** Asking this many days early counts too. */
  private static final int EARLY_DAYS = 3;

  /** What can be due. */
  public enum What {
    DAY_AFTER("day-after", "ask how it was, 24 to 48 hours after trying something new"),
    TWO_WEEKS("two-weeks", "ask again after 2 weeks"),
    SIX_WEEKS("six-weeks", "ask again after 6 weeks"),
    REVIEW("review", "look at everything together again"),
    KIT_BACK("kit-back", "kit on loan goes back"),
    KEEP("keep", "decide whether the case is still needed");

    private final String code;
    private final String words;

    What(String code, String words) {
      this.code = code;
      this.words = words;
    }

    /** The name for other programs. */
    public String code() {
      return code;
    }

    /** Plain words. */
    public String words() {
      return words;
    }
  }

  /**
   * What is due in one case, earliest first.
   *
   * @param trials of the case, in order
   * @param by the last day that counts
   */
  public static List<Due> of(CaseRecord record, List<Trial> trials, Day by) {
    List<Due> all = new ArrayList<>();
    afterTrials(record, trials, all);
    afterSuggesting(record, all);
    loans(record, trials, all);
    record.reviewOn().flatMap(Day::of).ifPresent(d -> all.add(new Due(d, What.REVIEW)));
    record.keepUntil().flatMap(Day::of).ifPresent(d -> all.add(new Due(d, What.KEEP)));
    return all.stream()
        .filter(d -> d.on().compareTo(by) <= 0)
        .distinct()
        .sorted(Comparator.comparing(Due::on).thenComparing(Due::what))
        .toList();
  }

  /** The day after the first trial of each set-up, unless it was asked since. */
  private static void afterTrials(CaseRecord record, List<Trial> trials, List<Due> all) {
    Map<String, Trial> first = new LinkedHashMap<>();
    trials.stream()
        .filter(t -> t.before().pain().isPresent())
        .forEach(t -> first.putIfAbsent(t.setUp().name(), t));
    for (Trial trial : first.values()) {
      Optional<Day> next = Day.of(trial.day()).map(d -> d.plusDays(1));
      if (next.isPresent() && !asked(record, next.get(), WellKnown.REVIEW_AFTER)) {
        all.add(new Due(next.get(), What.DAY_AFTER));
      }
    }
  }

  /** Two and six weeks after what was suggested last. */
  private static void afterSuggesting(CaseRecord record, List<Due> all) {
    List<Suggested> suggested = record.suggested();
    if (suggested.isEmpty()) {
      return;
    }
    Optional<Day> given = Day.ofMoment(suggested.get(suggested.size() - 1).at());
    if (given.isPresent()) {
      later(record, given.get().plusDays(TWO_WEEKS_DAYS), What.TWO_WEEKS, all);
      later(record, given.get().plusDays(SIX_WEEKS_DAYS), What.SIX_WEEKS, all);
    }
  }

  private static void later(CaseRecord record, Day day, What what, List<Due> all) {
    if (!asked(record, day.plusDays(-EARLY_DAYS), WellKnown.REVIEW_CHANGED)) {
      all.add(new Due(day, what));
    }
  }

  /** Kit goes back on the last day named for a set-up, unless a review came since. */
  private static void loans(CaseRecord record, List<Trial> trials, List<Due> all) {
    Map<String, String> back = new LinkedHashMap<>();
    for (Trial trial : trials) {
      trial.place().backOn().ifPresent(d -> back.put(trial.setUp().name(), d));
    }
    for (String iso : back.values()) {
      Day.of(iso)
          .filter(d -> !asked(record, d, WellKnown.REVIEW_CHANGED))
          .ifPresent(d -> all.add(new Due(d, What.KIT_BACK)));
    }
  }

  /** Whether a question was answered, or a review begun, on or after a day. */
  private static boolean asked(CaseRecord record, Day from, String fact) {
    return record.history().stream()
        .filter(e -> e.subject().equals(fact) || e.what() == Event.What.REVIEW_BEGUN)
        .anyMatch(e -> Day.ofMoment(e.at()).map(d -> d.compareTo(from) >= 0).orElse(false));
  }
}
