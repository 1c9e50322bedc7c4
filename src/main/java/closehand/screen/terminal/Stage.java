package closehand.screen.terminal;

import closehand.screen.frame.Key;
import closehand.screen.frame.ScreenSize;
import closehand.screen.frame.Showing;
import com.googlecode.lanterna.TerminalSize;
import com.googlecode.lanterna.screen.Screen;
import java.io.IOException;
import java.util.List;
import java.util.Set;
import java.util.function.BooleanSupplier;

/**
 * Brings keys to what is shown and its frames to the screen.
 *
 * <p>No threads and no clock; whoever drives it says what arrived and when. Nothing is painted
 * unless something arrived.
 */
final class Stage {
  private final Showing showing;
  private final Screen screen;
  private final Painter painter;
  private final HoldGuard guard = new HoldGuard();
  private boolean afresh = true;

  Stage(Showing showing, Screen screen, Theme theme) {
    this.showing = showing;
    this.screen = screen;
    this.painter = new Painter(screen, theme);
  }

  /** Hands keys on, one after the other, until the screen may close. */
  void take(List<Key> keys, long millis) {
    for (Key key : keys) {
      if (showing.over() || showing.busy()) {
        return;
      }
      if (key == Key.Named.REPAINT) {
        afresh = true;
      } else {
        take(key, millis);
      }
    }
  }

  private void take(Key key, long millis) {
    if (key instanceof Key.Pointer || key instanceof Key.Focus) {
      showing.press(key, millis);
      return;
    }
    switch (guard.judge(key, showing.repeats(key), showing.guards(), millis)) {
      case PASS -> showing.press(key, millis);
      case FIRST_HELD -> showing.press(new Key.Dropped(Key.Dropped.Why.HELD), millis);
      case FIRST_BOUNCED -> showing.press(new Key.Dropped(Key.Dropped.Why.BOUNCED), millis);
      case DROP -> {}
    }
  }

  /** Whether something waits to be done that takes its time; paint first, so that it is said. */
  boolean busy() {
    return showing.busy() && !showing.over();
  }

  /**
   * Does what waits to be done.
   *
   * @param meanwhile learns afterwards whether keys came that nobody could see the meaning of
   */
  void work(BooleanSupplier meanwhile) {
    showing.work();
    if (meanwhile.getAsBoolean() && !showing.over()) {
      showing.press(new Key.Dropped(Key.Dropped.Why.MEANWHILE));
    }
  }

  /** How long until something is due; below 0 where nothing is. */
  long waitMillis(long millis) {
    return showing.waitMillis(millis);
  }

  /** Tells that time has passed. */
  void passed(long millis) {
    if (!showing.over()) {
      showing.press(new Key.Passed(), millis);
    }
  }

  /** Tells that something came up beside the keys. */
  void noted() {
    if (!showing.over()) {
      showing.noted();
    }
  }

  /** What the terminal is to tell besides keys now. */
  Set<Showing.Report> reports() {
    return showing.over() ? Set.of() : showing.reports();
  }

  /** Takes over the size the terminal has now, if it is another one. */
  void fit() {
    TerminalSize changed = screen.doResizeIfNecessary();
    if (changed != null) {
      afresh = true;
      showing.press(new Key.Resized(size()));
    }
  }

  /** Shows what is to be seen now. */
  void paint() throws IOException {
    painter.paint(showing.frame(size()), afresh);
    afresh = false;
  }

  boolean over() {
    return showing.over();
  }

  private ScreenSize size() {
    TerminalSize size = screen.getTerminalSize();
    return new ScreenSize(Math.max(1, size.getColumns()), Math.max(1, size.getRows()));
  }
}
