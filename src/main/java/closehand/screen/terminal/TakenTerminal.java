package closehand.screen.terminal;

import com.googlecode.lanterna.screen.TerminalScreen;
import java.io.IOException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.locks.ReentrantLock;

/**
 * A terminal in our hands: painted on until it is given back, once, by whoever comes first: the end
 * of the work, a failure, or the end of the process.
 */
final class TakenTerminal {
  /** How long the end of the process waits for a frame that is being written. */
  private static final int PATIENCE_MILLIS = 500;

  private final TerminalSettings settings;
  private final TerminalDevice device;
  private final ReentrantLock lock = new ReentrantLock();
  private boolean entered;
  private boolean givenBack;

  TakenTerminal(TerminalSettings settings, TerminalDevice device) {
    this.settings = settings;
    this.device = device;
    Runtime.getRuntime().addShutdownHook(new Thread(this::giveBack, "terminal"));
  }

  /** Takes the screen over. */
  TerminalScreen open() throws IOException {
    TerminalScreen screen = new TerminalScreen(device);
    lock.lock();
    try {
      entered = true;
      screen.startScreen();
    } finally {
      lock.unlock();
    }
    return screen;
  }

  /** Paints, unless the terminal was given back meanwhile. */
  void paint(Stage stage) throws IOException {
    lock.lock();
    try {
      if (!givenBack) {
        device.report(stage.reports());
        stage.paint();
      }
    } finally {
      lock.unlock();
    }
  }

  /** Learns the size the window has now. */
  void measure() throws IOException {
    device.resize(settings.size());
  }

  /** Gives the terminal back as it was. Trouble is swallowed: the terminal may be gone. */
  void giveBack() {
    boolean alone = false;
    try {
      alone = lock.tryLock(PATIENCE_MILLIS, TimeUnit.MILLISECONDS);
      if (!givenBack) {
        givenBack = true;
        if (alone) {
          leaveScreen();
        }
        settings.giveBack();
      }
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    } catch (IOException e) {
      // There is nobody left to tell.
    } finally {
      if (alone) {
        lock.unlock();
      }
    }
  }

  private void leaveScreen() throws IOException {
    if (entered) {
      try {
        device.exitPrivateMode();
      } catch (IOException | IllegalStateException e) {
        // The settings are put back all the same.
      }
    }
  }
}
