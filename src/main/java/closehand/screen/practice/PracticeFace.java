package closehand.screen.practice;

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
import java.util.Optional;
import java.util.Set;

/**
 * Practice on the full screen. While inputs are listened to every key belongs to them; only
 * Backspace pauses. Everywhere else the keys are those of the other screens.
 */
public final class PracticeFace implements Showing {
  private final PracticeDesk desk;
  private final PracticeModel model;
  private final Glyphs glyphs;
  private final Guards guards;
  private ScreenSize size = ScreenSize.USUAL;
  private Phase phase = new Phase.First();
  private Spot spot = Spot.START;

  /**
   * Practice with a plan.
   *
   * @param guards how long keys are ignored after others where they answer something
   */
  public PracticeFace(PracticeDesk desk, Glyphs glyphs, Guards guards) {
    this.desk = desk;
    this.model = new PracticeModel(desk);
    this.glyphs = glyphs;
    this.guards = guards;
  }

  private Page page() {
    return PracticePages.of(phase, desk);
  }

  @Override
  public Frame frame(ScreenSize now) {
    size = now;
    return View.of(page().content(), spot, now, glyphs);
  }

  @Override
  public void press(Key key) {
    press(key, 0);
  }

  @Override
  public void press(Key key, long millis) {
    if (key instanceof Key.Closed) {
      become(model.closed(phase));
    } else if (PracticeModel.listens(phase) || key instanceof Key.Passed) {
      become(model.happened(phase, key, millis));
    } else if (key instanceof Key.Typed typed && typed.digit() >= 0) {
      digit(typed.digit(), millis);
    } else if (key instanceof Key.Named named) {
      named(named, millis);
    }
  }

  private void become(Phase next) {
    if (!next.equals(phase)) {
      phase = next;
      spot = Spot.START;
    }
  }

  private void digit(int digit, long millis) {
    List<Choice> choices = page().choices();
    for (int i = 0; i < choices.size(); i++) {
      Choice choice = choices.get(i);
      if (choice.digit() == digit) {
        Optional<Spot> first = Layout.of(page().content(), size, glyphs).lookFirst(spot, i);
        if (choice.doing().endsAtOnce() || first.isEmpty()) {
          become(model.taken(phase, choice, millis));
        } else {
          spot = first.get();
        }
        return;
      }
    }
  }

  private void named(Key.Named key, long millis) {
    Layout layout = Layout.of(page().content(), size, glyphs);
    switch (key) {
      case SPACE, DOWN, TAB -> spot = layout.next(spot);
      case UP -> spot = layout.previous(spot);
      case PAGE_DOWN, RIGHT -> spot = layout.pageDown(spot);
      case PAGE_UP, LEFT -> spot = layout.pageUp(spot);
      case HOME -> spot = Spot.START;
      case ENTER -> enter(layout, millis);
      case BACKSPACE, ESCAPE -> become(model.back(phase));
      case INTERRUPT -> become(model.interrupted(phase));
      default -> {
        // No other key means anything here.
      }
    }
  }

  private void enter(Layout layout, long millis) {
    if (layout.isUnread(layout.settle(spot))) {
      spot = layout.next(spot);
      return;
    }
    List<Choice> choices = page().choices();
    int chosen = layout.settle(spot).chosen();
    if (chosen < choices.size()) {
      become(model.taken(phase, choices.get(chosen), millis));
    }
  }

  @Override
  public boolean over() {
    return phase instanceof Phase.Left;
  }

  @Override
  public Guards guards() {
    return PracticeModel.listens(phase) ? new Guards(0, 0) : guards;
  }

  @Override
  public long waitMillis(long millis) {
    return phase instanceof Phase.Running running ? running.run().waitMillis(millis) : -1;
  }

  @Override
  public Set<Report> reports() {
    return PracticeModel.listens(phase)
        ? Set.of(Report.POINTER, Report.FOCUS)
        : Set.of(Report.FOCUS);
  }
}
