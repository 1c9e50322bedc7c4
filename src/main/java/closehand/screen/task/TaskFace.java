package closehand.screen.task;

import closehand.interview.Message;
import closehand.measure.task.Spoilt;
import closehand.measure.task.TaskMessage;
import closehand.measure.task.TaskRun;
import closehand.measure.task.TaskSetup;
import closehand.report.Glyphs;
import closehand.screen.frame.Frame;
import closehand.screen.frame.Guards;
import closehand.screen.frame.Key;
import closehand.screen.frame.ScreenSize;
import closehand.screen.frame.Showing;
import closehand.screen.view.Layout;
import closehand.screen.view.Spot;
import closehand.screen.view.View;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/**
 * A measured task on the full screen. The terminal stamps each key when it arrives; nothing here
 * looks at a clock.
 */
public final class TaskFace implements Showing {
  private static final int STOP = 9;
  private static final long MILLI = 1_000_000L;

  private final Glyphs glyphs;
  private final Guards guards;
  private TaskModel model;
  private Optional<Message.EndTask> ended = Optional.empty();
  private ScreenSize size;
  private Spot spot = Spot.START;

  /**
   * A task at its start.
   *
   * @param guards how long keys are ignored after others where they answer something
   * @param millis now, on the clock of the keys
   */
  public TaskFace(TaskSetup setup, Glyphs glyphs, ScreenSize size, Guards guards, long millis) {
    this.glyphs = glyphs;
    this.size = size;
    this.guards = guards;
    this.model = TaskModel.of(TaskRun.begin(setup, millis * MILLI));
    model.run().ended().ifPresent(this::remember);
  }

  /** What came of it; nothing while it goes on. */
  public Optional<Message.EndTask> ended() {
    return over() ? ended.or(() -> model.run().ended()) : Optional.empty();
  }

  @Override
  public Frame frame(ScreenSize now) {
    if (!now.equals(size)) {
      resized(now);
    }
    return View.of(page().content(), spot, size, glyphs);
  }

  private Page page() {
    return TaskPages.of(model);
  }

  @Override
  public void press(Key key) {
    press(key, 0);
  }

  @Override
  public void press(Key key, long millis) {
    if (key instanceof Key.Closed) {
      become(model.after(new TaskMessage.Spoil(Spoilt.DISCONNECTED)));
      while (!over()) {
        become(model.after(new TaskMessage.Next(millis * MILLI)));
      }
    } else if (key instanceof Key.Resized resized) {
      resized(resized.size());
    } else if (model.run().isGoing()) {
      during(key, millis * MILLI);
    } else if (key instanceof Key.Typed typed) {
      typed(typed, millis * MILLI);
    } else if (key instanceof Key.Named named) {
      named(named, millis * MILLI);
    }
  }

  private void resized(ScreenSize now) {
    size = now;
    become(model.after(new TaskMessage.Spoil(Spoilt.RESIZED)));
  }

  /** In a go every key belongs to it. */
  private void during(Key key, long nanos) {
    if (key instanceof Key.Passed) {
      become(model.after(new TaskMessage.Clock(nanos)));
    } else if (key instanceof Key.Pasted) {
      become(model.after(new TaskMessage.Spoil(Spoilt.PASTED)));
    } else if (key instanceof Key.Focus) {
      become(model.after(new TaskMessage.Spoil(Spoilt.FOCUS_LOST)));
    } else if (key instanceof Key.Typed typed) {
      // 9 is stop on every screen where nothing is typed.
      become(
          model.after(
              typed.digit() == STOP
                  ? new TaskMessage.Halt(nanos)
                  : new TaskMessage.Key(typed.text(), nanos)));
    } else if (key instanceof Key.Unknown unknown) {
      become(model.after(new TaskMessage.Key(unknown.code(), nanos)));
    } else if (key instanceof Key.Named named && isTap(named)) {
      become(
          model.after(
              !model.run().keys() && named == Key.Named.ENTER
                  ? new TaskMessage.Next(nanos)
                  : new TaskMessage.Key(named.name(), nanos)));
    } else if (key instanceof Key.Named) {
      become(model.after(new TaskMessage.Halt(nanos)));
    }
  }

  /** Keys that mean "stop" or "back" in every program are never taken for a tap. */
  private static boolean isTap(Key.Named key) {
    return key != Key.Named.ESCAPE && key != Key.Named.BACKSPACE && key != Key.Named.INTERRUPT;
  }

  private void become(TaskModel next) {
    if (!next.equals(model)) {
      boolean samePage =
          next.run().step().equals(model.run().step()) && next.page() == model.page();
      model = next;
      spot = samePage ? spot : Spot.START;
      model.run().ended().ifPresent(this::remember);
    }
  }

  /** What came of it is kept when it is first known: after that the run only says good-bye. */
  private void remember(Message.EndTask end) {
    if (ended.isEmpty()) {
      ended = Optional.of(end);
    }
  }

  private void typed(Key.Typed key, long nanos) {
    if (key.digit() >= 0 && model.writes()) {
      become(model.digit(key.digit()));
    } else if (key.digit() >= 0) {
      page().byDigit(key.digit()).ifPresent(d -> become(model.done(d, nanos)));
    } else if (model.run().ended().isEmpty()) {
      switch (key.text().toLowerCase(Locale.ROOT)) {
        case "p" -> become(model.done(new Page.Doing.Pain(), nanos));
        case "s" -> become(model.done(new Page.Doing.Stop(), nanos));
        case "k" -> notKnown(nanos);
        case "q" -> become(model.done(new Page.Doing.Leave(), nanos));
        default -> {
          // No other letter means anything here.
        }
      }
    }
  }

  private void notKnown(long nanos) {
    if (model.writes()) {
      become(model.done(new Page.Doing.NotKnown(), nanos));
    }
  }

  private void named(Key.Named key, long nanos) {
    Layout layout = Layout.of(page().content(), size, glyphs);
    switch (key) {
      case SPACE, DOWN, TAB -> spot = layout.next(spot);
      case UP -> spot = layout.previous(spot);
      case PAGE_DOWN, RIGHT -> spot = layout.pageDown(spot);
      case PAGE_UP, LEFT -> spot = layout.pageUp(spot);
      case HOME -> spot = Spot.START;
      case ENTER -> enter(layout, nanos);
      case BACKSPACE -> become(model.erased());
      case INTERRUPT -> become(model.done(new Page.Doing.Leave(), nanos));
      default -> {
        // No other key means anything here.
      }
    }
  }

  private void enter(Layout layout, long nanos) {
    if (layout.isUnread(layout.settle(spot))) {
      spot = layout.next(spot);
      return;
    }
    int chosen = layout.settle(spot).chosen();
    if (chosen < page().doings().size()) {
      become(model.done(page().doings().get(chosen), nanos));
    }
  }

  @Override
  public boolean over() {
    return model.run().isOver();
  }

  @Override
  public Guards guards() {
    return model.run().isGoing() && model.run().keys() ? new Guards(0, 0) : guards;
  }

  @Override
  public boolean repeats(Key key) {
    return Showing.super.repeats(key) || (model.writes() && key instanceof Key.Typed);
  }

  @Override
  public long waitMillis(long millis) {
    return model.run().endsAt().map(end -> Math.max(0, end / MILLI - millis + 1)).orElse(-1L);
  }

  @Override
  public Set<Report> reports() {
    return Set.of(Report.FOCUS);
  }
}
