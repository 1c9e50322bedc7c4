package closehand.screen;

import closehand.screen.view.Layout;
import closehand.screen.view.Spot;

/** Where the cursor is. */
final class Moved {
  private Moved() {}

  static int chosen(ScreenModel model) {
    return Pressing.layout(model).settle(model.top().spot()).chosen();
  }

  /** Whether a digit has only shown what it would take; the same one again takes it. */
  static boolean isHeldBack(ScreenModel model) {
    String said = model.said().sentence();
    return said.startsWith("The same key again") || said.equals("Please read on first.");
  }

  /** Whether the screen is at its start, where Home leads. */
  static boolean isAtItsStart(ScreenModel model) {
    return model.top().spot().equals(Spot.START);
  }

  static boolean unread(ScreenModel model) {
    Layout layout = Pressing.layout(model);
    return layout.isUnread(layout.settle(model.top().spot()));
  }
}
