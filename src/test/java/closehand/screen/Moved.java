package closehand.screen;

/** Where the cursor is. */
final class Moved {
  private Moved() {}

  static int chosen(ScreenModel model) {
    return Pressing.layout(model).settle(model.top().spot()).chosen();
  }

  static boolean unread(ScreenModel model) {
    return Pressing.layout(model).isUnread(Pressing.layout(model).settle(model.top().spot()));
  }
}
