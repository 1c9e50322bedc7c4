package closehand.measure.task;

import closehand.bank.Task;
import closehand.bank.TaskBook;
import closehand.interview.Provenance;
import java.util.List;
import java.util.Optional;

/**
 * What a run begins with.
 *
 * @param task the task
 * @param book what holds for all tasks
 * @param onCall whether player and interviewer are on a call
 * @param by who runs it
 * @param refusals why it must wait, in plain sentences; none if it may begin
 * @param pain pain now, 0 to 10, if known
 * @param timedSecondsToday timed work done on this day already
 * @param restSeconds rest that is still due since the task before
 * @param partOfDay such as {@code morning}
 * @param minutesIn minutes since the sitting began
 * @param keysCanBeTimed whether the edge stamps single keys as they arrive
 */
public record TaskSetup(
    Task task,
    TaskBook book,
    boolean onCall,
    Provenance.By by,
    List<String> refusals,
    Optional<Double> pain,
    int timedSecondsToday,
    int restSeconds,
    String partOfDay,
    int minutesIn,
    boolean keysCanBeTimed) {
  public TaskSetup {
    refusals = List.copyOf(refusals);
  }

  /** Whether taps on a key of this machine may be counted: in one room only, never over a call. */
  public boolean offersKeys() {
    return keysCanBeTimed && task.go().keys() && !onCall;
  }

  /** What somebody must say yes to first. */
  public List<TaskBook.Assurance> assurances() {
    return book.assurances().stream().filter(a -> onCall || !a.onCallOnly()).toList();
  }
}
