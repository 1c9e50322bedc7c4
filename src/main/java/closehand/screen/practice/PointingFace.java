package closehand.screen.practice;

import closehand.bank.Stops;
import closehand.measure.practice.Happening;
import closehand.measure.practice.PointingTask;
import closehand.measure.practice.PointingTask.Stage;
import closehand.measure.practice.StopReason;
import closehand.report.Glyphs;
import closehand.screen.frame.Frame;
import closehand.screen.frame.Guards;
import closehand.screen.frame.Key;
import closehand.screen.frame.ScreenSize;
import closehand.screen.frame.Showing;
import closehand.screen.view.Layout;
import closehand.screen.view.Spot;
import closehand.screen.view.View;
import java.util.List;
import java.util.Set;
import java.util.function.Function;

/**
 * Pointing to and fro on the full screen: with whatever moves the mouse pointer, or with the arrow
 * keys and Enter. The terminal is asked to tell of the mouse only while somebody points.
 */
public final class PointingFace implements Showing {
  private final Function<PointingTask, List<String>> finished;
  private final Stops stops;
  private final Glyphs glyphs;
  private final Guards guards;
  private PointingTask task;
  private List<String> told = List.of();
  private ScreenSize size = ScreenSize.USUAL;
  private Spot spot = Spot.START;
  private int marker;
  private boolean stopping;
  private boolean body;
  private boolean left;

  /**
   * Pointing with one or two ways in turn.
   *
   * @param finished keeps what was measured once it is over, and tells what came of it
   * @param stops how the stop signs are put
   * @param mostSeconds how much timed work is left for the day
   */
  public PointingFace(
      List<String> ways,
      Function<PointingTask, List<String>> finished,
      Stops stops,
      int mostSeconds,
      Glyphs glyphs,
      Guards guards) {
    this.stops = stops;
    this.task = PointingTask.of(ways, ScreenSize.USUAL.columns(), mostSeconds);
    this.finished = finished;
    this.glyphs = glyphs;
    this.guards = guards;
    this.marker = ScreenSize.USUAL.columns() / 2;
  }

  private boolean aiming() {
    return task.stage() == Stage.AIMING && !stopping;
  }

  private Page page() {
    return stopping ? PracticePages.stop(body, stops) : PointingPages.of(task, told, stops);
  }

  @Override
  public Frame frame(ScreenSize now) {
    fit(now);
    return aiming()
        ? PointingPages.targets(task, marker, now, glyphs)
        : View.of(page().content(), spot, now, glyphs);
  }

  /** Another size: targets are drawn anew, and a part that was going on does not count. */
  private void fit(ScreenSize now) {
    if (!now.equals(size)) {
      size = now;
      become(task.disturbed(Happening.What.SIZE, now.columns()));
      marker = now.columns() / 2;
    }
  }

  private void become(PointingTask next) {
    boolean over = next.over() && !task.over();
    if (next.stage() != task.stage()) {
      spot = Spot.START;
    }
    task = next;
    if (over) {
      told = finished.apply(task);
    }
  }

  @Override
  public void press(Key key) {
    press(key, 0);
  }

  @Override
  public void press(Key key, long millis) {
    if (key instanceof Key.Closed) {
      become(task.over() ? task : task.disturbed(Happening.What.CLOSED, size.columns()));
      left = true;
    } else if (key instanceof Key.Resized resized) {
      fit(resized.size());
    } else if (aiming()) {
      aimed(key, millis);
    } else if (key instanceof Key.Typed typed && typed.digit() >= 0) {
      page().choices().stream()
          .filter(c -> c.digit() == typed.digit())
          .findFirst()
          .ifPresent(this::taken);
    } else if (key instanceof Key.Named named) {
      named(named);
    }
  }

  private void aimed(Key key, long millis) {
    if (key instanceof Key.Pointer pointer) {
      if (pointer.doing() == Key.Pointer.Doing.PRESSED && pointer.button() == 1) {
        become(task.selected(pointer.column(), millis));
      }
      return;
    }
    if (key instanceof Key.Pasted) {
      become(task.disturbed(Happening.What.PASTE, size.columns()));
    } else if (key instanceof Key.Focus focus && !focus.here()) {
      become(task.disturbed(Happening.What.WINDOW, size.columns()));
    } else if (key == Key.Named.LEFT) {
      marker = Math.max(0, marker - 1);
    } else if (key == Key.Named.RIGHT) {
      marker = Math.min(size.columns() - 1, marker + 1);
    } else if (key == Key.Named.ENTER || key == Key.Named.SPACE) {
      become(task.selected(marker, millis));
    } else if (key instanceof Key.Typed || key instanceof Key.Named) {
      become(task.paused());
      stopping = true;
      body = false;
    }
  }

  private void taken(Choice choice) {
    spot = Spot.START;
    Choice.Doing doing = choice.doing();
    if (doing.stops()) {
      stopping = false;
      become(task.stopped(StopReason.of(doing.sign())));
      return;
    }
    switch (doing) {
      case PAIN -> become(task.pain(choice.digit()));
      case GO_ON -> {
        become(stopping ? task : task.begun());
        stopping = false;
      }
      case ASK_STOP -> {
        stopping = true;
        body = false;
      }
      case ASK_BODY -> body = true;
      default -> left = true;
    }
  }

  private void named(Key.Named key) {
    Layout layout = Layout.of(page().content(), size, glyphs);
    switch (key) {
      case SPACE, DOWN, TAB -> spot = layout.next(spot);
      case UP -> spot = layout.previous(spot);
      case PAGE_DOWN -> spot = layout.pageDown(spot);
      case PAGE_UP -> spot = layout.pageUp(spot);
      case ENTER -> {
        int chosen = layout.settle(spot).chosen();
        if (layout.isUnread(layout.settle(spot))) {
          spot = layout.next(spot);
        } else if (chosen < page().choices().size()) {
          taken(page().choices().get(chosen));
        }
      }
      case BACKSPACE, ESCAPE, INTERRUPT -> {
        left = left || task.over();
        stopping = !task.over();
        body = false;
        spot = Spot.START;
      }
      default -> {
        // No other key means anything here.
      }
    }
  }

  @Override
  public boolean over() {
    return left;
  }

  @Override
  public Guards guards() {
    return aiming() ? new Guards(0, 0) : guards;
  }

  @Override
  public Set<Report> reports() {
    return aiming() ? Set.of(Report.POINTER, Report.FOCUS) : Set.of(Report.FOCUS);
  }
}
