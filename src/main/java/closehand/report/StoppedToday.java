package closehand.report;

import closehand.bank.Bank;
import closehand.bank.TaskBook;
import closehand.interview.Measured;
import closehand.measure.practice.PracticeRecord;
import closehand.measure.practice.StopReason;
import closehand.measure.trial.StopSign;
import closehand.measure.trial.Trial;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * What was stopped on a day, whichever activity it was. A sign of the body in one of them ends all
 * of them for that day: the body that was measured is the one that would practise. Practice
 * estimate, to be confirmed by a clinician.
 *
 * @param tasks measured tasks of the case
 * @param practice practice runs of the case
 * @param trials trials of the case
 */
public record StoppedToday(
    List<Measured> tasks, List<PracticeRecord> practice, List<Trial> trials) {
  /** A case in which nothing was ever stopped. */
  public static final StoppedToday NOTHING = new StoppedToday(List.of(), List.of(), List.of());

  /**
   * Stops of a task that are no sign of the body: a wish, nobody there, or a task that does not
   * suit. Any other one counts, also one this program does not know.
   */
  private static final Set<String> NOT_OF_THE_BODY = Set.of("signal", "alone", "distress");

  private static final Set<StopReason> NOT_OF_PRACTICE =
      Set.of(StopReason.WISH, StopReason.ALONE, StopReason.TIME, StopReason.CLOSED);

  /** Takes copies. */
  public StoppedToday {
    tasks = List.copyOf(tasks);
    practice = List.copyOf(practice);
    trials = List.copyOf(trials);
  }

  /** The same with these measured tasks in place of its own. */
  public StoppedToday with(List<Measured> measured) {
    return new StoppedToday(measured, practice, trials);
  }

  /**
   * Why nothing more is measured, practised or tried on this day; empty where nothing forbids it.
   *
   * @param bank the bank with the words of a task's stops
   */
  public Optional<String> why(Bank bank, String isoDate) {
    return task(bank, isoDate)
        .map(words -> said("A measured task", words))
        .or(() -> practised(isoDate).map(words -> said("A practice run", words)))
        .or(() -> tried(isoDate).map(words -> said("A trial", words)));
  }

  private Optional<String> task(Bank bank, String isoDate) {
    return tasks.stream()
        .filter(m -> m.isOn(isoDate) && m.ending() == Measured.Ending.STOPPED)
        .map(Measured::stop)
        .filter(id -> !NOT_OF_THE_BODY.contains(id))
        .findFirst()
        .map(
            id ->
                bank.tasks()
                    .flatMap(book -> book.stop(id))
                    .map(TaskBook.Stop::words)
                    .orElse("a sign of the body"));
  }

  private Optional<String> practised(String isoDate) {
    return practice.stream()
        .filter(r -> r.day().equals(isoDate))
        .flatMap(r -> r.stop().stream())
        .filter(reason -> !NOT_OF_PRACTICE.contains(reason))
        .findFirst()
        .map(StopReason::words);
  }

  private Optional<String> tried(String isoDate) {
    return trials.stream()
        .filter(t -> t.day().equals(isoDate))
        .flatMap(t -> t.stopped().stream())
        .filter(StopSign::isOfBody)
        .findFirst()
        .map(StopSign::words);
  }

  private static String said(String what, String words) {
    return what
        + " was stopped today: "
        + (words.endsWith(".") ? words : words + ".")
        + " So nothing more is measured, practised or tried today.";
  }
}
