package closehand.measure.task;

import closehand.bank.TaskBook;
import closehand.interview.Measured;
import closehand.interview.Message;
import closehand.interview.Value;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;

/**
 * One measured task as it stands. Immutable: {@link #update} gives the next.
 *
 * @param setup what it began with
 * @param step where it stands
 * @param startedAt when it was opened, in nanoseconds of the edge's clock
 * @param goes every go so far
 * @param once what was asked once at the end
 * @param posture how the player sits or lies, a code; empty until it is said
 * @param support what carries arm and feet, a code; empty until it is said
 * @param keys whether taps on a key are counted
 * @param timedNanos timed work in this run
 * @param failed goes in a row that did not work out
 * @param spasms spasms that settled
 * @param timeIsUp whether the timed work of the day is used up
 */
public record TaskRun(
    TaskSetup setup,
    Step step,
    long startedAt,
    List<Measured.Go> goes,
    Map<String, Value> once,
    String posture,
    String support,
    boolean keys,
    long timedNanos,
    int failed,
    int spasms,
    boolean timeIsUp) {
  static final long SECOND = 1_000_000_000L;

  public TaskRun {
    goes = List.copyOf(goes);
    once = Map.copyOf(once);
  }

  /** A run that has not begun; it stays refused where the setup says that it must wait. */
  public static TaskRun begin(TaskSetup setup, long at) {
    Step first = setup.refusals().isEmpty() ? new Step.Told() : new Step.Refused();
    return new TaskRun(
        setup, first, at, List.of(), Map.of(), "", "", false, 0, 0, 0, /* timeIsUp= */ false);
  }

  /** The run after a message; the same where the message means nothing here. */
  public static TaskRun update(TaskRun run, TaskMessage message) {
    return new TaskUpdate(run).take(message);
  }

  /** The same as {@link #update}, to write one message after the other. */
  public TaskRun after(TaskMessage message) {
    return update(this, message);
  }

  /** Whether nothing more happens. */
  public boolean isOver() {
    return step instanceof Step.Over;
  }

  /** Goes that count. */
  public int counted() {
    return (int) goes.stream().filter(Measured.Go::counts).count();
  }

  /** Whether a go is on. */
  public boolean isGoing() {
    return step instanceof Step.Going;
  }

  /** When the go that is on ends by itself, in nanoseconds of the edge's clock. */
  public Optional<Long> endsAt() {
    int seconds = setup.task().go().seconds();
    if (!(step instanceof Step.Going going) || seconds == 0) {
      return Optional.empty();
    }
    if (!keys) {
      return Optional.of(going.begunAt() + seconds * SECOND);
    }
    return going.taps().begun()
        ? Optional.of(going.taps().first() + seconds * SECOND)
        : Optional.empty();
  }

  /** What ended it at once, if something did. */
  Optional<TaskBook.Stop> stop() {
    return step instanceof Step.Stopped stopped
        ? setup.book().stop(stopped.stop())
        : Optional.empty();
  }

  /** The result as far as goes were counted. */
  Counted result() {
    return Counted.of(setup.task(), goes, once);
  }

  /** Circumstances in words, for the note beside each answer. */
  String circumstances() {
    return TaskWords.circumstances(this);
  }

  /**
   * What the interview is told in the end. A run that was never begun tells of nothing.
   *
   * @param stop what ended it at once, or empty
   */
  Message.EndTask ended(Measured.Ending ending, String stop) {
    boolean done = ending == Measured.Ending.DONE;
    Map<String, Value> results = done ? result().results() : new LinkedHashMap<>();
    Measured measured =
        new Measured(
            "",
            setup.task().id(),
            setup.task().place(),
            setup.by(),
            new Measured.Circumstances(
                setup.onCall() ? "video" : "room",
                posture.isEmpty() ? "notSaid" : posture,
                support.isEmpty() ? "notSaid" : support,
                setup.partOfDay(),
                setup.minutesIn()),
            keys,
            goes,
            (int) Math.ceil((double) timedNanos / SECOND),
            ending,
            stop,
            List.copyOf(results.keySet()));
    Optional<String> noMore =
        setup
            .book()
            .stop(stop)
            .filter(TaskBook.Stop::endsTasks)
            .map(s -> "No more tasks in this sitting: " + TaskWords.lower(s.words()) + ".");
    return new Message.EndTask(measured, results, done ? circumstances() : "", noMore);
  }

  /** How it ended; nothing while something is still to be asked. */
  public Optional<Message.EndTask> ended() {
    if (step instanceof Step.Stopped stopped) {
      return Optional.of(ended(Measured.Ending.STOPPED, stopped.stop()));
    }
    if (step instanceof Step.Result) {
      return Optional.of(ended(Measured.Ending.DONE, ""));
    }
    return step instanceof Step.Over || step instanceof Step.Refused
        ? Optional.of(ended(Measured.Ending.LEFT, ""))
        : Optional.empty();
  }

  TaskRun at(Step next) {
    return changed(d -> d.step = next);
  }

  TaskRun going(List<Measured.Go> all, int failedNow) {
    return changed(
        d -> {
          d.goes = all;
          d.failed = failedNow;
        });
  }

  TaskRun asked(Map<String, Value> all) {
    return changed(d -> d.once = all);
  }

  TaskRun sitting(String how, String carriedBy) {
    return changed(
        d -> {
          d.posture = how;
          d.support = carriedBy;
        });
  }

  TaskRun byKeys(boolean yes) {
    return changed(d -> d.keys = yes);
  }

  TaskRun worked(long nanos) {
    return changed(d -> d.timedNanos += Math.max(0, nanos));
  }

  TaskRun settled() {
    return changed(d -> d.spasms++);
  }

  TaskRun outOfTime() {
    return changed(d -> d.timeIsUp = true);
  }

  private TaskRun changed(Consumer<Draft> change) {
    Draft draft = new Draft(this);
    change.accept(draft);
    return draft.run();
  }

  /** A copy in which single members can be changed before it becomes a run again. */
  private static final class Draft {
    private final TaskSetup setup;
    private Step step;
    private final long startedAt;
    private List<Measured.Go> goes;
    private Map<String, Value> once;
    private String posture;
    private String support;
    private boolean keys;
    private long timedNanos;
    private int failed;
    private int spasms;
    private boolean timeIsUp;

    Draft(TaskRun of) {
      setup = of.setup();
      step = of.step();
      startedAt = of.startedAt();
      goes = of.goes();
      once = of.once();
      posture = of.posture();
      support = of.support();
      keys = of.keys();
      timedNanos = of.timedNanos();
      failed = of.failed();
      spasms = of.spasms();
      timeIsUp = of.timeIsUp();
    }

    TaskRun run() {
      return new TaskRun(
          setup,
          step,
          startedAt,
          goes,
          once,
          posture,
          support,
          keys,
          timedNanos,
          failed,
          spasms,
          timeIsUp);
    }
  }
}
