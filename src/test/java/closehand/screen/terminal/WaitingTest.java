package closehand.screen.terminal;

import static org.junit.jupiter.api.Assertions.assertEquals;

import closehand.report.Glyphs;
import closehand.screen.frame.Canvas;
import closehand.screen.frame.Frame;
import closehand.screen.frame.Key;
import closehand.screen.frame.Role;
import closehand.screen.frame.ScreenSize;
import closehand.screen.frame.Showing;
import com.googlecode.lanterna.TerminalSize;
import com.googlecode.lanterna.screen.TerminalScreen;
import com.googlecode.lanterna.terminal.virtual.DefaultVirtualTerminal;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A15: keys that come while something takes its time do not count, and that is said once. */
class WaitingTest {
  /** Something that takes its time whenever s was pressed. */
  private static final class Slow implements Showing {
    final List<Key> keys = new ArrayList<>();
    final List<String> shown = new ArrayList<>();
    boolean busy;

    @Override
    public Frame frame(ScreenSize size) {
      Canvas canvas = new Canvas(size, Glyphs.UNICODE);
      canvas.put(0, 0, busy ? "> One moment" : "> Ready", Role.PLAIN);
      shown.add(canvas.frame().text().get(0));
      return canvas.frame();
    }

    @Override
    public void press(Key key) {
      keys.add(key);
      busy = key.equals(Key.of('s'));
    }

    @Override
    public boolean busy() {
      return busy;
    }

    @Override
    public void work() {
      busy = false;
    }

    @Override
    public boolean over() {
      return false;
    }
  }

  private final Slow slow = new Slow();

  private Stage stage() throws IOException {
    TerminalScreen screen =
        new TerminalScreen(new DefaultVirtualTerminal(new TerminalSize(40, 12)));
    screen.startScreen();
    return new Stage(slow, screen, Theme.PLAIN);
  }

  @Test
  void keysInTheSamePieceAreDroppedAndThoseMeanwhileAreToldOnce() throws IOException {
    Stage stage = stage();
    stage.take(List.of(Key.of('s'), Key.of('1'), Key.of('9')), 1000);
    stage.paint();
    assertEquals(List.of("> One moment"), slow.shown);
    stage.work(() -> true);
    stage.paint();
    assertEquals(List.of("> One moment", "> Ready"), slow.shown);
    Key told = new Key.Dropped(Key.Dropped.Why.MEANWHILE);
    assertEquals(List.of(Key.of('s'), told), slow.keys);
  }

  @Test
  void nothingIsSaidWhereNoKeyCame() throws IOException {
    Stage stage = stage();
    stage.take(List.of(Key.of('s')), 1000);
    stage.work(() -> false);
    stage.take(List.of(Key.of('2')), 9000);
    assertEquals(List.of(Key.of('s'), Key.of('2')), slow.keys);
  }
}
