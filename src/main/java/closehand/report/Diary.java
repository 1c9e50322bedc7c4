package closehand.report;

import closehand.bank.Bank;
import closehand.bank.StopSign;
import closehand.bank.TaskBook;
import closehand.interview.Measured;
import closehand.measure.practice.PointingRecord;
import closehand.measure.practice.PracticeRecord;
import closehand.measure.practice.StopReason;
import closehand.measure.trial.Trial;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * What was done with a case on which day, whichever activity it was: what was stopped, and how much
 * timed work there was. A sign of the body in one activity ends all of them for that day: the body
 * that was measured is the one that would practise. Practice estimate, to be confirmed by a
 * clinician.
 *
 * @param entries in any order
 * @param reviewed days on which a review was gone through: pain and the chest were answered
 */
public record Diary(List<Entry> entries, List<String> reviewed) {
  /** A case with which nothing was ever done. */
  public static final Diary EMPTY = new Diary(List.of(), List.of());

  /** Takes copies. */
  public Diary {
    entries = List.copyOf(entries);
    reviewed = List.copyOf(reviewed);
  }

  /** Which activity it was. */
  public enum What {
    TASK("A measured task"),
    PRACTICE("A practice run"),
    POINTING("Pointing"),
    TRIAL("A trial"),
    /** Something is kept that cannot be read. */
    UNREAD("Something");

    private final String words;

    What(String words) {
      this.words = words;
    }

    /** Whether it is timed work, of which there is so much a day. */
    boolean isTimed() {
      return this == TASK || this == PRACTICE || this == POINTING;
    }
  }

  /**
   * Something that was done.
   *
   * @param day an ISO date; empty where it cannot be read
   * @param stop what ended it early, a name in files; empty where nothing did
   * @param timedSeconds timed work
   */
  public record Entry(String day, What what, String stop, int timedSeconds) {
    private boolean endsTheDay() {
      boolean outside = StopReason.named(stop).filter(r -> r.sign().isEmpty()).isPresent();
      return !stop.isEmpty()
          && !outside
          && StopSign.named(stop).map(StopSign::endsTheDay).orElse(true);
    }
  }

  /** What these records tell; a task of which no go was done is no timed work. */
  public static List<Entry> entries(
      List<Measured> tasks,
      List<PracticeRecord> practice,
      List<PointingRecord> pointing,
      List<Trial> trials) {
    List<Entry> all = new ArrayList<>();
    for (Measured task : tasks) {
      boolean stopped = task.ending() == Measured.Ending.STOPPED;
      String stop = stopped && task.stop().isEmpty() ? "not said" : stopped ? task.stop() : "";
      if (stopped || !task.goes().isEmpty()) {
        all.add(new Entry(day(task.at()), What.TASK, stop, task.timedSeconds()));
      }
    }
    practice.forEach(
        r -> all.add(new Entry(r.day(), What.PRACTICE, code(r.stop()), r.timedSeconds())));
    pointing.forEach(
        r -> all.add(new Entry(day(r.at()), What.POINTING, code(r.stop()), r.timedSeconds())));
    trials.forEach(
        t ->
            all.add(new Entry(t.day(), What.TRIAL, t.stopped().map(StopSign::code).orElse(""), 0)));
    return all;
  }

  private static String code(Optional<StopReason> stop) {
    return stop.map(StopReason::code).orElse("");
  }

  private static String day(String moment) {
    return moment.substring(0, Math.min("0000-00-00".length(), moment.length()));
  }

  /** The same with these tasks in place of its own. */
  public Diary with(List<Measured> tasks) {
    List<Entry> all = new ArrayList<>(entries(tasks, List.of(), List.of(), List.of()));
    entries.stream().filter(e -> e.what() != What.TASK).forEach(all::add);
    return new Diary(all, reviewed);
  }

  /** Seconds of timed work on this day in these activities. */
  public int timedSeconds(String isoDate, What... of) {
    return timed(isoDate, of).mapToInt(Entry::timedSeconds).sum();
  }

  /** How often there was timed work on this day in these activities. */
  public int times(String isoDate, What... of) {
    return (int) timed(isoDate, of).count();
  }

  private Stream<Entry> timed(String isoDate, What... of) {
    List<What> wanted = List.of(of);
    return entries.stream()
        .filter(e -> e.day().equals(isoDate) && e.what().isTimed())
        .filter(e -> wanted.isEmpty() || wanted.contains(e.what()));
  }

  /**
   * Why nothing more is measured, practised or tried on this day; empty where nothing forbids it.
   * What cannot be read is never taken for something that went well.
   *
   * @param bank the bank with the words of the stops
   */
  public Optional<String> why(Bank bank, String isoDate) {
    return entries.stream()
        .filter(e -> e.day().equals(isoDate) && e.what() != What.UNREAD)
        .filter(Entry::endsTheDay)
        .findFirst()
        .map(e -> said(e, bank))
        .or(() -> unread(isoDate));
  }

  private static String said(Entry entry, Bank bank) {
    String words =
        bank.tasks()
            .flatMap(book -> book.stop(entry.stop()))
            .map(TaskBook.Stop::words)
            .orElse("a sign that is not known here");
    return entry.what().words
        + " was stopped today: "
        + words
        + ". So nothing more is measured, practised or tried today.";
  }

  /** The days of things that cannot be read, as far as their days can. */
  public List<String> unreadDays() {
    return entries.stream()
        .filter(e -> e.what() == What.UNREAD && !e.day().isEmpty())
        .map(Entry::day)
        .distinct()
        .sorted()
        .toList();
  }

  private Optional<String> unread(String isoDate) {
    List<Entry> unread = entries.stream().filter(e -> e.what() == What.UNREAD).toList();
    boolean today = unread.stream().anyMatch(e -> e.day().equals(isoDate));
    boolean undated = unread.stream().anyMatch(e -> e.day().isEmpty());
    if (today) {
      return Optional.of(
          "Something that was practised or tried today cannot be read any more, so nobody knows"
              + " whether a sign of the body ended it. Ask the player. Nothing more is measured,"
              + " practised or tried today.");
    }
    return undated && !reviewed.contains(isoDate)
        ? Optional.of(
            "Something that was practised or tried cannot be read any more, and nobody knows when it"
                + " was or whether a sign of the body ended it. Ask the player, then go through pain"
                + " and the warning signs again with closehand interview --review (questions END-02"
                + " and SAF-03).")
        : Optional.empty();
  }
}
