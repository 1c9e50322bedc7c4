package closehand.screen.practice;

import closehand.measure.before.Before;
import closehand.report.Glyphs;
import closehand.screen.frame.Frame;
import closehand.screen.frame.Guards;
import closehand.screen.frame.Key;
import closehand.screen.frame.ScreenSize;
import closehand.screen.frame.Showing;
import closehand.screen.practice.Choice.Doing;
import closehand.screen.view.Layout;
import closehand.screen.view.Spot;
import closehand.screen.view.View;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** Asks on the full screen what comes before practice or a trial. */
public final class BeforeFace implements Showing {
  private static final int LEAVE = 0;
  private static final int MOST_DIGIT = 9;

  private final Function<Before, List<String>> settle;
  private final Glyphs glyphs;
  private final Guards guards;
  private Before before;
  private List<String> why = List.of();
  private boolean settled;
  private boolean left;
  private ScreenSize size = ScreenSize.USUAL;
  private Spot spot = Spot.START;

  /**
   * A face over the questions.
   *
   * @param settle keeps what was said and tells why nothing begins; nothing where it may
   * @param guards how long keys are ignored after others
   */
  public BeforeFace(
      Before before, Function<Before, List<String>> settle, Glyphs glyphs, Guards guards) {
    this.before = before;
    this.settle = settle;
    this.glyphs = glyphs;
    this.guards = guards;
  }

  /** Whether all is well and something may begin. */
  public boolean isClear() {
    return settled && !isRefused();
  }

  private boolean isRefused() {
    return before.ended().isPresent() || !why.isEmpty();
  }

  private Page page() {
    if (before.over()) {
      Page.Builder page = new Page.Builder("Not now");
      before.ended().ifPresent(e -> page.strong(e).gap());
      return page.paragraphs(why).offer(LEAVE, "Leave", Doing.LEAVE).menu();
    }
    int number = before.at() + 1;
    Page.Builder page =
        new Page.Builder("Before we begin, " + number + " of " + before.asks().size());
    if (!before.said().isEmpty()) {
      page.warn(before.said()).gap();
    }
    page.strong(before.ask().words()).gap();
    if (before.asksNumber()) {
      for (int pain = 0; pain < MOST_DIGIT; pain++) {
        page.offer(pain, pain == 0 ? "Not at all" : Integer.toString(pain), Doing.PAIN);
      }
      return page.offer(MOST_DIGIT, "9 or 10, or it is sharp", Doing.PAIN).menu();
    }
    List<String> choices = before.ask().choices();
    for (int i = 0; i < choices.size(); i++) {
      page.offer(i + 1, choices.get(i), Doing.PAIN);
    }
    return page.gap().offer(LEAVE, "Stop, or not now", Doing.LEAVE).menu();
  }

  @Override
  public Frame frame(ScreenSize now) {
    size = now;
    return View.of(page().content(), spot, now, glyphs);
  }

  @Override
  public void press(Key key) {
    if (key instanceof Key.Closed) {
      leave();
      left = true;
    } else if (key instanceof Key.Typed typed && typed.digit() >= 0) {
      digit(typed.digit());
    } else if (key instanceof Key.Named named) {
      named(named);
    }
  }

  private void digit(int digit) {
    List<Choice> choices = page().choices();
    for (int i = 0; i < choices.size(); i++) {
      Choice choice = choices.get(i);
      if (choice.digit() == digit) {
        Optional<Spot> first = Layout.of(page().content(), size, glyphs).lookFirst(spot, i);
        if (choice.doing() == Doing.LEAVE || first.isEmpty()) {
          taken(choice);
        } else {
          spot = first.get();
        }
        return;
      }
    }
  }

  private void named(Key.Named key) {
    Layout layout = Layout.of(page().content(), size, glyphs);
    switch (key) {
      case SPACE, DOWN, TAB -> spot = layout.next(spot);
      case UP -> spot = layout.previous(spot);
      case PAGE_DOWN, RIGHT -> spot = layout.pageDown(spot);
      case PAGE_UP, LEFT -> spot = layout.pageUp(spot);
      case HOME -> spot = Spot.START;
      case ENTER -> enter(layout);
      case BACKSPACE, ESCAPE, INTERRUPT -> leave();
      default -> {
        // No other key means anything here.
      }
    }
  }

  private void enter(Layout layout) {
    int chosen = layout.settle(spot).chosen();
    if (layout.isUnread(layout.settle(spot))) {
      spot = layout.next(spot);
    } else if (chosen < page().choices().size()) {
      taken(page().choices().get(chosen));
    }
  }

  private void taken(Choice choice) {
    if (choice.doing() == Doing.LEAVE) {
      leave();
    } else {
      become(before.answered(choice.digit() - (before.asksNumber() ? 0 : 1)));
    }
  }

  private void leave() {
    if (before.over()) {
      left = true;
    } else {
      become(before.left());
    }
  }

  private void become(Before next) {
    before = next;
    spot = Spot.START;
    if (before.over() && !settled) {
      settled = true;
      why = settle.apply(before);
    }
  }

  @Override
  public boolean over() {
    return left || isClear();
  }

  @Override
  public Guards guards() {
    return guards;
  }
}
