package closehand.screen;

import closehand.screen.view.Block;

/** How the screen behaves. */
final class SettingsMenu {
  private static final int[] HOLD_MILLIS = {0, 250, 500, 750, 1000, 1500};
  private static final int[] BOUNCE_MILLIS = {0, 30, 60, 120, 250, 500};

  private SettingsMenu() {}

  static Shown of(ScreenModel model) {
    Settings now = model.settings();
    Shown.Builder menu = new Shown.Builder("Settings");
    menu.add(Block.strong("Each line changes when you take it.")).gap();
    menu.offer(
        1,
        "Shared view, wide apart and without notes for the interviewer: " + onOff(now.shared()),
        new Act.Adjust(now.withShared(!now.shared())));
    menu.offer(
        2,
        "A number only moves, and Enter takes the answer: " + onOff(now.needsEnter()),
        new Act.Adjust(now.withEnterNeeded(!now.needsEnter())));
    menu.offer(
        3,
        "Letters are commands: " + onOff(now.letters()),
        new Act.Adjust(now.withLetters(!now.letters())));
    menu.offer(
        4, "Change the letters", new Act.Show(new LettersScreen(0, java.util.Optional.empty())));
    menu.offer(
        5,
        "The same key again is ignored for: " + time(now.holdMillis()),
        new Act.Adjust(now.withGuards(next(HOLD_MILLIS, now.holdMillis()), now.bounceMillis())));
    menu.offer(
        6,
        "Any key soon after another is ignored for: " + time(now.bounceMillis()),
        new Act.Adjust(now.withGuards(now.holdMillis(), next(BOUNCE_MILLIS, now.bounceMillis()))));
    return menu.offer(0, "Back", new Act.Close()).build();
  }

  private static String onOff(boolean on) {
    return on ? "on" : "off";
  }

  private static String time(int millis) {
    return millis == 0 ? "off" : millis + " thousandths of a second";
  }

  private static int next(int[] steps, int now) {
    for (int step : steps) {
      if (step > now) {
        return step;
      }
    }
    return steps[0];
  }
}
