package closehand.json.snapshot;

import closehand.bank.StopSign;
import closehand.bank.Stops;
import closehand.bank.Task;
import closehand.bank.TaskBook;
import closehand.bank.TaskKind;
import java.util.EnumSet;
import java.util.Set;

/** The measured tasks. */
final class TasksSnapshot {
  private TasksSnapshot() {}

  static void write(TaskBook book, SnapshotOut out) {
    limits(book.limits(), out);
    out.list(book.before(), n -> need(n, out));
    out.list(
        book.assurances(),
        a -> {
          out.text(a.ask());
          out.text(a.otherwise());
          out.flag(a.onCallOnly());
        });
    out.list(book.postures(), c -> choice(c, out));
    out.list(book.supports(), c -> choice(c, out));
    out.list(
        book.stops().all(),
        s -> {
          out.text(s.id());
          out.text(s.words());
          out.texts(s.then());
          out.flag(s.endsTasks());
          out.flag(s.waits());
          out.where(s.where());
        });
    out.list(book.tasks(), t -> task(t, out));
    out.texts(book.basis());
    out.where(book.where());
  }

  static TaskBook read(SnapshotIn in) {
    return new TaskBook(
        limits(in),
        in.list(() -> need(in)),
        in.list(() -> new TaskBook.Assurance(in.text(), in.text(), in.flag())),
        in.list(() -> choice(in)),
        in.list(() -> choice(in)),
        new Stops(
            in.list(
                () ->
                    new TaskBook.Stop(
                        StopSign.named(in.text()).orElseThrow(),
                        in.text(),
                        in.texts(),
                        in.flag(),
                        in.flag(),
                        in.where()))),
        in.list(() -> task(in)),
        in.texts(),
        in.where());
  }

  private static void limits(TaskBook.Limits l, SnapshotOut out) {
    out.number(l.timedSecondsADay());
    out.number(l.restSeconds());
    out.number(l.longRestSeconds());
    ConditionSnapshot.write(l.longRestWhen(), out);
    out.number(l.tasksADay());
    ConditionSnapshot.write(l.fewTasksWhen(), out);
    out.number(l.digitsAHand());
    out.number(l.failedInARow());
    out.number(l.spasmSeconds());
    out.number(l.painRise());
    out.number(l.painAt());
    ConditionSnapshot.write(l.quietWhen(), out);
  }

  private static TaskBook.Limits limits(SnapshotIn in) {
    return new TaskBook.Limits(
        in.number(),
        in.number(),
        in.number(),
        ConditionSnapshot.read(in),
        in.number(),
        ConditionSnapshot.read(in),
        in.number(),
        in.number(),
        in.number(),
        in.number(),
        in.number(),
        ConditionSnapshot.read(in));
  }

  private static void need(Task.Need n, SnapshotOut out) {
    ConditionSnapshot.write(n.when(), out);
    out.flag(n.wanted());
    out.text(n.say());
    out.where(n.where());
  }

  private static Task.Need need(SnapshotIn in) {
    return new Task.Need(ConditionSnapshot.read(in), in.flag(), in.text(), in.where());
  }

  private static void choice(Task.Choice c, SnapshotOut out) {
    out.text(c.code());
    out.text(c.words());
  }

  private static Task.Choice choice(SnapshotIn in) {
    return new Task.Choice(in.text(), in.text());
  }

  private static void task(Task t, SnapshotOut out) {
    out.text(t.id());
    out.text(t.place());
    words(t.words(), out);
    out.list(EnumSet.copyOf(t.kinds()), out::name);
    out.flag(t.forClinician());
    out.list(t.before(), n -> need(n, out));
    go(t.go(), out);
    out.list(t.measures(), m -> measure(m, out));
    out.list(t.results(), r -> result(r, out));
    out.list(
        t.readings(),
        r -> {
          ConditionSnapshot.write(r.when(), out);
          out.text(r.say());
        });
    out.texts(t.basis());
    out.where(t.where());
  }

  private static Task task(SnapshotIn in) {
    return new Task(
        in.text(),
        in.text(),
        new Task.Words(in.text(), in.text(), in.text(), in.text(), in.text(), in.text()),
        Set.copyOf(in.list(() -> in.name(TaskKind.values()))),
        in.flag(),
        in.list(() -> need(in)),
        new Task.Go(
            in.flag(), in.number(), in.number(), in.number(), in.flag(), in.text(), in.text()),
        in.list(() -> measure(in)),
        in.list(() -> result(in)),
        in.list(() -> new Task.Reading(ConditionSnapshot.read(in), in.text())),
        in.texts(),
        in.where());
  }

  private static void words(Task.Words w, SnapshotOut out) {
    out.text(w.name());
    out.text(w.what());
    out.text(w.why());
    out.text(w.room());
    out.text(w.video());
    out.text(w.posture());
  }

  private static void go(Task.Go g, SnapshotOut out) {
    out.flag(g.practice());
    out.number(g.most());
    out.number(g.seconds());
    out.number(g.atMostSeconds());
    out.flag(g.keys());
    out.text(g.start());
    out.text(g.stop());
  }

  private static void measure(Task.Measure m, SnapshotOut out) {
    out.text(m.id());
    out.text(m.ask());
    out.name(m.kind());
    out.name(m.counting());
    out.flag(m.eachGo());
    out.number(m.minimum());
    out.number(m.maximum());
    out.text(m.unit());
    out.list(m.options(), c -> choice(c, out));
    out.texts(m.of());
    out.name(m.taps());
    out.where(m.where());
  }

  private static Task.Measure measure(SnapshotIn in) {
    return new Task.Measure(
        in.text(),
        in.text(),
        in.name(Task.Kind.values()),
        in.name(Task.Counting.values()),
        in.flag(),
        in.number(),
        in.number(),
        in.text(),
        in.list(() -> choice(in)),
        in.texts(),
        in.name(Task.Taps.values()),
        in.where());
  }

  private static void result(Task.Result r, SnapshotOut out) {
    out.text(r.fact());
    out.text(r.measure());
    out.number(r.times());
    out.list(
        r.cases(),
        c -> {
          ConditionSnapshot.write(c.when(), out);
          ConditionSnapshot.operand(c.value(), out);
        });
    out.where(r.where());
  }

  private static Task.Result result(SnapshotIn in) {
    return new Task.Result(
        in.text(),
        in.text(),
        in.number(),
        in.list(() -> new Task.Case(ConditionSnapshot.read(in), ConditionSnapshot.operand(in))),
        in.where());
  }
}
