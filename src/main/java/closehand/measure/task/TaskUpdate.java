package closehand.measure.task;

import closehand.bank.Task;
import closehand.bank.TaskBook;
import closehand.interview.Measured;
import closehand.interview.Value;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** One message taken in: from the run before to the run after. */
final class TaskUpdate {
  /** An end that is told later than this after its time was not watched. */
  private static final long LATE_NANOS = 2 * TaskRun.SECOND;

  /** The stops that the program itself can find. */
  static final String PAIN = TaskMessage.Stop.PAIN;

  static final String DISTRESS = "distress";
  static final String SPASM = "spasm";
  static final String ALONE = "alone";

  private final TaskRun run;
  private final Task task;
  private final TaskBook book;

  TaskUpdate(TaskRun run) {
    this.run = run;
    this.task = run.setup().task();
    this.book = run.setup().book();
  }

  TaskRun take(TaskMessage message) {
    Step step = run.step();
    if (run.isOver() || step instanceof Step.Refused) {
      return run.at(new Step.Over());
    }
    if (step instanceof Step.Stopped || step instanceof Step.Result) {
      return message instanceof TaskMessage.Next ? run.at(new Step.Over()) : run;
    }
    if (message instanceof TaskMessage.Pain) {
      return stopped(PAIN);
    }
    if (message instanceof TaskMessage.Stop stop && book.stop(stop.id()).isPresent()) {
      return stopped(stop.id());
    }
    if (message instanceof TaskMessage.Leave) {
      return run.at(new Step.Over());
    }
    if (step instanceof Step.Going going) {
      return during(going, message);
    }
    if (message instanceof TaskMessage.Spoil spoil && spoil.cause() == Spoilt.DISCONNECTED) {
      return cutOff();
    }
    return between(step, message);
  }

  /** What was just done is not taken for a go that nobody saw the end of. */
  private TaskRun cutOff() {
    List<Measured.Go> goes = new ArrayList<>(run.goes());
    boolean fresh = run.step() instanceof Step.PainNow && !goes.isEmpty();
    if (fresh) {
      Measured.Go last = goes.remove(goes.size() - 1);
      goes.add(new Measured.Go(last.practice(), Spoilt.DISCONNECTED.code(), last.values()));
    }
    return run.going(goes, run.failed()).at(new Step.Over());
  }

  private TaskRun between(Step step, TaskMessage message) {
    if (step instanceof Step.Told && message instanceof TaskMessage.Next) {
      return run.at(new Step.Assured(0));
    }
    if (step instanceof Step.Assured assured && message instanceof TaskMessage.Say say) {
      return say.yes() ? assured(assured.number()) : run.at(new Step.First(assured.number()));
    }
    if (step instanceof Step.First first && message instanceof TaskMessage.Next) {
      return run.at(new Step.Assured(first.number()));
    }
    if (step instanceof Step.Posture && message instanceof TaskMessage.Pick pick) {
      return Written.picked(book.postures(), pick)
          .map(c -> run.sitting(c, "").at(new Step.Support()))
          .orElse(run);
    }
    if (step instanceof Step.Support && message instanceof TaskMessage.Pick pick) {
      return Written.picked(book.supports(), pick)
          .map(c -> prepared(run.sitting(run.posture(), c)))
          .orElse(run);
    }
    if (step instanceof Step.Method && message instanceof TaskMessage.Pick pick) {
      return pick.choice() == 0 || pick.choice() == 1
          ? rested(run.byKeys(pick.choice() == 1))
          : run;
    }
    if (step instanceof Step.Resting && message instanceof TaskMessage.Next next) {
      long due = run.startedAt() + run.setup().restSeconds() * TaskRun.SECOND;
      return next.at() >= due ? ready(run) : run.at(new Step.Resting(/* early= */ true));
    }
    if (step instanceof Step.Ready ready && message instanceof TaskMessage.Next next) {
      return run.at(new Step.Going(ready.practice(), next.at(), Taps.NONE, ""));
    }
    return afterwards(step, message);
  }

  private TaskRun afterwards(Step step, TaskMessage message) {
    if (step instanceof Step.Why why) {
      return why(why, message);
    }
    if (step instanceof Step.Settling settling && message instanceof TaskMessage.Say say) {
      return say.yes() ? spoilt(run.settled(), settling.practice(), Spoilt.SPASM) : stopped(SPASM);
    }
    if (step instanceof Step.NotCounted done && message instanceof TaskMessage.Next) {
      return run.failed() >= book.limits().failedInARow()
          ? stopped(DISTRESS)
          : run.at(new Step.PainNow(done.practice()));
    }
    if (step instanceof Step.Counting counting) {
      return counting(counting, message);
    }
    if (step instanceof Step.PainNow pain) {
      return pain(pain, message);
    }
    if (step instanceof Step.Another && message instanceof TaskMessage.Say say) {
      return say.yes() ? ready(run) : finish(run);
    }
    if (step instanceof Step.Once once) {
      Optional<Value> value = Written.value(onceMeasures().get(once.number()), message);
      if (value.isPresent()) {
        Map<String, Value> all = new LinkedHashMap<>(run.once());
        all.put(onceMeasures().get(once.number()).id(), value.get());
        return once(run.asked(all), once.number() + 1);
      }
    }
    return run;
  }

  private TaskRun assured(int number) {
    return number + 1 < run.setup().assurances().size()
        ? run.at(new Step.Assured(number + 1))
        : run.at(new Step.Posture());
  }

  private TaskRun prepared(TaskRun next) {
    return run.setup().offersKeys() ? next.at(new Step.Method()) : rested(next);
  }

  private TaskRun rested(TaskRun next) {
    return run.setup().restSeconds() > 0
        ? next.at(new Step.Resting(/* early= */ false))
        : ready(next);
  }

  /** The next go, or the end where the day has no time left for it. */
  private TaskRun ready(TaskRun next) {
    long used = run.setup().timedSecondsToday() * TaskRun.SECOND + next.timedNanos();
    long needed = task.go().atMostSeconds() * TaskRun.SECOND;
    if (used + needed > book.limits().timedSecondsADay() * TaskRun.SECOND) {
      return finish(next.outOfTime());
    }
    boolean practised = next.goes().stream().anyMatch(Measured.Go::practice);
    return next.at(new Step.Ready(task.go().practice() && !practised));
  }

  private TaskRun during(Step.Going going, TaskMessage message) {
    if (message instanceof TaskMessage.Spoil spoil) {
      TaskRun spoilt = spoilt(run, going.practice(), spoil.cause());
      return spoil.cause() == Spoilt.DISCONNECTED ? spoilt.at(new Step.Over()) : spoilt;
    }
    if (message instanceof TaskMessage.Halt halt) {
      return halted(going, halt.at());
    }
    if (message instanceof TaskMessage.Key key) {
      return key(going, key);
    }
    if (message instanceof TaskMessage.Next next) {
      return run.keys() ? key(going, new TaskMessage.Key("Enter", next.at())) : over(going, next);
    }
    if (message instanceof TaskMessage.Clock clock && isUp(clock.at())) {
      return clock.at() - run.endsAt().orElseThrow() > LATE_NANOS
          ? spoilt(run.worked(worked(going, clock.at())), going.practice(), Spoilt.PAUSED)
          : counted(going, clock.at());
    }
    return run;
  }

  private boolean isUp(long at) {
    return run.endsAt().filter(end -> at >= end).isPresent();
  }

  /** A tap where taps are counted; any other key stops. */
  private TaskRun key(Step.Going going, TaskMessage.Key key) {
    if (isUp(key.at())) {
      return during(going, new TaskMessage.Clock(key.at()));
    }
    boolean tap = run.keys() && (going.key().isEmpty() || going.key().equals(key.key()));
    if (!tap) {
      return halted(going, key.at());
    }
    Taps taps = going.taps().with(key.at());
    Step.Going more = new Step.Going(going.practice(), going.begunAt(), taps, key.key());
    return taps.repeats()
        ? spoilt(run.worked(worked(more, key.at())), going.practice(), Spoilt.HELD_KEY)
        : run.at(more);
  }

  private TaskRun halted(Step.Going going, long at) {
    return run.worked(worked(going, at)).at(new Step.Why(going.practice()));
  }

  /** The one who counts says that it is over. */
  private TaskRun over(Step.Going going, TaskMessage.Next next) {
    boolean needsAll = task.measures().stream().anyMatch(m -> m.taps() != Task.Taps.NONE);
    boolean early = run.endsAt().filter(end -> next.at() < end).isPresent();
    return early && needsAll
        ? spoilt(run.worked(worked(going, next.at())), going.practice(), Spoilt.ENDED_EARLY)
        : counted(going, next.at());
  }

  private long worked(Step.Going going, long at) {
    long from = going.taps().begun() ? going.taps().first() : going.begunAt();
    return run.keys() && !going.taps().begun() ? 0 : at - from;
  }

  private TaskRun counted(Step.Going going, long at) {
    TaskRun after = run.worked(worked(going, at));
    if (going.practice()) {
      return with(after, new Measured.Go(true, "", Map.of()))
          .at(new Step.PainNow(/* practice= */ true));
    }
    Map<String, Value> values = run.keys() ? taps(going.taps()) : Map.of();
    return counting(after, 0, values);
  }

  private Map<String, Value> taps(Taps taps) {
    Map<String, Value> values = new LinkedHashMap<>();
    long end = task.go().seconds() * TaskRun.SECOND;
    long ten = 10 * TaskRun.SECOND;
    for (Task.Measure measure : task.measures()) {
      switch (measure.taps()) {
        case NONE -> {}
        case ALL -> values.put(measure.id(), number(measure, taps.count(0, end)));
        case FIRST_TEN_SECONDS -> values.put(measure.id(), number(measure, taps.count(0, ten)));
        case LAST_TEN_SECONDS ->
            values.put(measure.id(), number(measure, taps.count(end - ten, end)));
      }
    }
    return values;
  }

  private static Value number(Task.Measure measure, int count) {
    return new Value.Number(Math.max(measure.minimum(), Math.min(measure.maximum(), count)));
  }

  private List<Task.Measure> goMeasures() {
    return task.measures().stream()
        .filter(m -> m.eachGo() && m.kind() != Task.Kind.DROP)
        .filter(m -> !run.keys() || m.taps() == Task.Taps.NONE)
        .toList();
  }

  private List<Task.Measure> onceMeasures() {
    return task.measures().stream().filter(m -> !m.eachGo()).toList();
  }

  private TaskRun counting(Step.Counting counting, TaskMessage message) {
    Task.Measure measure = goMeasures().get(counting.number());
    Optional<Value> value = Written.value(measure, message);
    if (value.isEmpty()) {
      return message instanceof TaskMessage.NotKnown
          ? spoilt(run, /* practice= */ false, Spoilt.SET_ASIDE)
          : run;
    }
    Map<String, Value> values = new LinkedHashMap<>(counting.values());
    values.put(measure.id(), value.get());
    return counting(run, counting.number() + 1, values);
  }

  private TaskRun counting(TaskRun next, int number, Map<String, Value> values) {
    if (number < goMeasures().size()) {
      return next.at(new Step.Counting(number, values));
    }
    Map<String, Value> all = new LinkedHashMap<>(values);
    for (Task.Measure measure : task.measures()) {
      if (measure.kind() == Task.Kind.DROP) {
        int drop =
            Counted.drop(whole(values, measure.of().get(0)), whole(values, measure.of().get(1)));
        all.put(measure.id(), number(measure, drop));
      }
    }
    return with(next, new Measured.Go(false, "", all)).at(new Step.PainNow(/* practice= */ false));
  }

  private static int whole(Map<String, Value> values, String id) {
    return values.get(id) instanceof Value.Number number ? (int) number.value() : 0;
  }

  /** One more go; one in which nothing at all was counted did not work out. */
  private TaskRun with(TaskRun next, Measured.Go go) {
    List<Measured.Go> goes = new ArrayList<>(next.goes());
    goes.add(go);
    boolean nothing =
        go.counts()
            && go.values().get(task.measures().get(0).id()) instanceof Value.Number number
            && number.value() == 0;
    boolean failed = !go.discarded().isEmpty() || nothing;
    return next.going(goes, failed ? next.failed() + 1 : go.practice() ? next.failed() : 0);
  }

  private TaskRun spoilt(TaskRun next, boolean practice, Spoilt cause) {
    return with(next, new Measured.Go(practice, cause.code(), Map.of()))
        .at(new Step.NotCounted(practice, cause));
  }

  private TaskRun why(Step.Why why, TaskMessage message) {
    if (!(message instanceof TaskMessage.Pick pick)) {
      return run;
    }
    if (pick.choice() == book.stops().all().size()) {
      return spoilt(run, why.practice(), Spoilt.SET_ASIDE);
    }
    if (pick.choice() < 0 || pick.choice() > book.stops().all().size()) {
      return run;
    }
    TaskBook.Stop stop = book.stops().all().get(pick.choice());
    return stop.waits() && run.spasms() == 0
        ? run.at(new Step.Settling(why.practice()))
        : stopped(stop.id());
  }

  private TaskRun pain(Step.PainNow pain, TaskMessage message) {
    if (message instanceof TaskMessage.NotKnown) {
      return stopped(PAIN);
    }
    if (!(message instanceof TaskMessage.Number number)
        || number.value() < 0
        || number.value() > 10) {
      return run;
    }
    boolean risen =
        run.setup()
            .pain()
            .filter(before -> number.value() - before >= book.limits().painRise())
            .isPresent();
    if (risen || number.value() >= book.limits().painAt()) {
      return stopped(PAIN);
    }
    if (run.failed() >= book.limits().failedInARow()) {
      return stopped(DISTRESS);
    }
    if (pain.practice() || run.counted() == 0) {
      return ready(run);
    }
    return run.counted() < task.go().most() ? run.at(new Step.Another()) : finish(run);
  }

  private TaskRun finish(TaskRun next) {
    return next.counted() == 0 ? next.at(new Step.Over()) : once(next, 0);
  }

  private TaskRun once(TaskRun next, int number) {
    return number < onceMeasures().size()
        ? next.at(new Step.Once(number))
        : next.at(new Step.Result());
  }

  private TaskRun stopped(String id) {
    return run.at(new Step.Stopped(id));
  }
}
