package closehand.screen.terminal;

import static org.junit.jupiter.api.Assertions.assertEquals;

import closehand.report.Glyphs;
import closehand.screen.frame.Canvas;
import closehand.screen.frame.Frame;
import closehand.screen.frame.Key;
import closehand.screen.frame.Role;
import closehand.screen.frame.ScreenSize;
import closehand.screen.frame.Showing;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class ScreenDriverTest {
  /** Shows every key it was given, one a row; ends with q. */
  private static final class Diary implements Showing {
    final List<Key> keys = new ArrayList<>();

    @Override
    public Frame frame(ScreenSize size) {
      Canvas canvas = new Canvas(size, Glyphs.UNICODE);
      canvas.put(0, 0, "keys so far: " + keys.size() + " \u00fc \u624b|", Role.STRONG);
      for (int i = 0; i < keys.size(); i++) {
        canvas.put(i + 1, 0, "> " + keys.get(i), Role.PLAIN);
      }
      canvas.cursor(keys.size(), 0);
      return canvas.frame();
    }

    @Override
    public void press(Key key) {
      keys.add(key);
    }

    @Override
    public boolean over() {
      return keys.contains(Key.of('q'));
    }
  }

  private final Diary diary = new Diary();

  @Test
  void keysArriveAndTheScreenFollows() {
    ScreenDriver.open(diary, 60, 12)
        .expectLine("keys so far: 0 \u00fc \u624b|")
        .press("1", "Enter", "Up", "Escape")
        .expectLine("keys so far: 4")
        .expectCursorOn("ESCAPE")
        .expectOver(false)
        .press("q", "2")
        .expectLine("keys so far: 5")
        .expectOver(true);
    assertEquals(
        List.of(Key.of('1'), Key.Named.ENTER, Key.Named.UP, Key.Named.ESCAPE, Key.of('q')),
        diary.keys);
  }

  @Test
  void aHeldKeyCountsOnceAndThatIsSaidOnce() {
    ScreenDriver.open(diary, 60, 12).hold("1", 24).press("2");
    assertEquals(
        List.of(Key.of('1'), new Key.Dropped(Key.Dropped.Why.HELD), Key.of('2')), diary.keys);
  }

  @Test
  void aHeldArrowMovesOn() {
    ScreenDriver.open(diary, 60, 40).hold("Down", 9);
    assertEquals(10, diary.keys.size());
  }

  @Test
  void pastedTextIsOneKey() {
    ScreenDriver.open(diary, 60, 12).paste("12345\r6");
    assertEquals(List.of(new Key.Pasted("12345\r6")), diary.keys);
  }

  @Test
  void aNewSizeIsToldAndPaintedAtOnce() {
    ScreenDriver.open(diary, 60, 12).press("1").resize(30, 5).expectLine("> Resized");
    assertEquals(new Key.Resized(new ScreenSize(30, 5)), diary.keys.get(1));
  }
}
