package closehand.screen;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import closehand.report.Glyphs;
import closehand.screen.frame.ScreenSize;
import org.junit.jupiter.api.Test;

/** With digits alone: a stop is read before its lines are taken, and figures can begin words. */
class ReadingOnTest {
  private static final ScreenSize NARROW = new ScreenSize(40, 12);

  private static ScreenModel typing(ScreenModel model, String keys) {
    ScreenModel next = model;
    for (char key : keys.toCharArray()) {
      next = Scenes.step(next, Scenes.key(key));
    }
    return next;
  }

  private static String text(ScreenModel model) {
    return String.join("\n", model.frame().text());
  }

  @Test
  void aStopIsNotTakenAsReadWhileItsLinesAreOutOfSight() {
    ScreenModel stopped = Scenes.from("stopped", NARROW, Glyphs.UNICODE);
    ScreenModel pressed = typing(stopped, "1");
    assertTrue(text(pressed).contains("Please read on first."), text(pressed));
    assertTrue(pressed.top().screen() instanceof NoticeScreen, "it still stands");
    ScreenModel read = typing(stopped, "888888888888");
    assertTrue(text(read).contains("I have read this"), text(read));
    assertFalse(typing(read, "1").top().screen() instanceof NoticeScreen, "now it is taken");
  }

  @Test
  void aFigureBeginsWordsWhereNoLineHasIt() {
    ScreenModel words = Scenes.from("0 session.stopSignal", NARROW, Glyphs.UNICODE);
    ScreenModel typed = typing(words, "2 blinks");
    assertTrue(text(typed).contains("2 blinks"), text(typed));
    assertFalse(text(typed).contains("There is no line"), text(typed));
  }
}
