package closehand.screen;

import closehand.screen.view.Block;
import java.util.Optional;

/** How the screen behaves. */
final class SettingsMenu {
  /** The line where letters are changed; both faces have it at the same number. */
  private static final int LETTERS = 4;

  private SettingsMenu() {}

  static Shown of(ScreenModel model) {
    Settings now = model.settings();
    Shown.Builder menu = new Shown.Builder("Settings");
    menu.add(Block.strong("Each line changes when you take it.")).gap();
    int digit = 0;
    for (Setting setting : Setting.values()) {
      if (++digit == LETTERS) {
        menu.offer(
            digit++, "Change the letters", new Act.Show(new LettersScreen(0, Optional.empty())));
      }
      menu.offer(digit, setting.words(now), new Act.Adjust(setting.next(now)));
    }
    return menu.offer(0, "Back", new Act.Close()).build();
  }
}
