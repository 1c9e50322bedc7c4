package closehand.screen.task;

import closehand.bank.TaskBook;
import closehand.measure.task.TaskMessage;
import closehand.measure.task.TaskRun;
import closehand.measure.task.TaskWords;
import closehand.measure.task.TaskWords.Wants;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;

/**
 * A run with what belongs to the screen alone.
 *
 * @param run the run
 * @param page which page of choices is in sight
 * @param picks choices picked so far, where several may be
 * @param typed the number typed so far
 * @param checking whether the number is shown once more
 * @param choosingStop whether the reasons to stop are in sight
 */
record TaskModel(
    TaskRun run,
    int page,
    List<Integer> picks,
    String typed,
    boolean checking,
    boolean choosingStop) {
  private static final int LONGEST_NUMBER = 3;

  TaskModel {
    picks = List.copyOf(picks);
  }

  static TaskModel of(TaskRun run) {
    return new TaskModel(run, 0, List.of(), "", false, false);
  }

  /** After a message; what belonged to the page before is let go of. */
  TaskModel after(TaskMessage message) {
    TaskRun next = run.after(message);
    return next.step().equals(run.step()) && next.equals(run) ? this : of(next);
  }

  TaskModel done(Page.Doing doing, long nanos) {
    if (doing instanceof Page.Doing.Next) {
      return after(new TaskMessage.Next(nanos));
    }
    if (doing instanceof Page.Doing.Take take) {
      return taken(take.choice());
    }
    if (doing instanceof Page.Doing.More) {
      int pages = (choices() + TaskPages.CHOICES_A_PAGE - 1) / TaskPages.CHOICES_A_PAGE;
      return new TaskModel(run, (page + 1) % pages, picks, typed, checking, choosingStop);
    }
    if (doing instanceof Page.Doing.Picked) {
      return after(new TaskMessage.Picks(picks));
    }
    if (doing instanceof Page.Doing.Right) {
      return typed.isEmpty()
          ? this
          : after(new TaskMessage.Number(Integer.parseInt(typed))).retyped();
    }
    if (doing instanceof Page.Doing.Again) {
      return of(run);
    }
    if (doing instanceof Page.Doing.NotKnown) {
      return after(new TaskMessage.NotKnown());
    }
    if (doing instanceof Page.Doing.Pain) {
      return after(new TaskMessage.Pain());
    }
    if (doing instanceof Page.Doing.Stop) {
      return new TaskModel(run, 0, picks, typed, checking, /* choosingStop= */ true);
    }
    return doing instanceof Page.Doing.Back ? of(run) : after(new TaskMessage.Leave());
  }

  /** A number that did not fit is typed again. */
  private TaskModel retyped() {
    return typed.isEmpty() ? this : of(run);
  }

  private int choices() {
    return choosingStop ? stops().size() : TaskWords.of(run).choices().size();
  }

  private List<TaskBook.Stop> stops() {
    return run.setup().book().stops().all();
  }

  private TaskModel taken(int choice) {
    if (choosingStop) {
      return after(new TaskMessage.Stop(stops().get(choice).id()));
    }
    Wants wants = TaskWords.of(run).wants();
    if (wants == Wants.YES_NO) {
      return after(new TaskMessage.Say(choice == 0));
    }
    if (wants == Wants.PICK) {
      return after(new TaskMessage.Pick(choice));
    }
    TreeSet<Integer> next = new TreeSet<>(picks);
    if (!next.remove(choice)) {
      next.add(choice);
    }
    return new TaskModel(run, page, List.copyOf(next), typed, checking, choosingStop);
  }

  /** Whether digits are a number here. */
  boolean writes() {
    return TaskWords.of(run).wants() == Wants.NUMBER && !checking && !choosingStop;
  }

  /** One more digit; a number as long as they get is shown once more, so that digits are enough. */
  TaskModel digit(int digit) {
    String next = typed + digit;
    int longest = longest();
    return next.length() > longest
        ? this
        : new TaskModel(run, page, picks, next, next.length() == longest, choosingStop);
  }

  private int longest() {
    Optional<Integer> most = TaskWords.of(run).most();
    return most.map(m -> Integer.toString(m).length()).orElse(LONGEST_NUMBER);
  }

  /** One digit less. */
  TaskModel erased() {
    return typed.isEmpty()
        ? this
        : new TaskModel(
            run, page, picks, typed.substring(0, typed.length() - 1), false, choosingStop);
  }
}
