package closehand.screen.terminal;

import closehand.screen.frame.Key;
import closehand.screen.frame.ScreenSize;
import closehand.screen.frame.Showing;
import com.googlecode.lanterna.screen.TerminalScreen;
import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.charset.Charset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import org.jspecify.annotations.Nullable;

/**
 * The whole screen of a real terminal, taken over and given back.
 *
 * <p>It is given back when what is shown is over, when anything fails, and when the process is told
 * to end. Nothing is painted, counted or asked while nothing arrives.
 */
public final class FullScreen {
  private static final int FRAME_BYTES = 1 << 15;

  /** Longer than any guard. */
  private static final int AGES_MILLIS = 100_000;

  private final TakenTerminal terminal;
  private final KeyDecoder decoder = new KeyDecoder();
  private final BlockingQueue<Arrival> arrivals = new LinkedBlockingQueue<>();
  private final InputStream input;
  private final Characters characters;
  private final Theme theme;

  private FullScreen(TakenTerminal terminal, InputStream input, Charset charset, Theme theme) {
    this.terminal = terminal;
    this.input = input;
    this.characters = new Characters(charset);
    this.theme = theme;
  }

  /**
   * Has Java load what the library needs to make its first character, which takes longer than
   * painting one. Meant for another thread, while the terminal is being asked.
   */
  public static void prepare() {
    Painter.prepare();
  }

  /**
   * Takes the terminal over.
   *
   * @param input the keyboard, as bytes
   * @param output the screen, as bytes
   * @param charset the terminal's character set
   * @param theme how roles look
   * @return nothing where this process has no terminal that can be set up
   */
  public static Optional<FullScreen> takeOver(
      InputStream input, OutputStream output, Charset charset, Theme theme) {
    return TerminalSettings.takeOver()
        .map(
            settings -> {
              OutputStream whole = new BufferedOutputStream(output, FRAME_BYTES);
              TerminalDevice device = new TerminalDevice(whole, charset, settings.firstSize());
              TakenTerminal taken = new TakenTerminal(settings, device);
              return new FullScreen(taken, input, charset, theme);
            });
  }

  /**
   * Goes through what a sitting does without a terminal and shows nothing, so that Java learns the
   * classes it takes.
   *
   * @param typed the characters that are typed
   */
  public static void rehearse(Showing showing, String typed, Charset charset, Theme theme)
      throws IOException {
    TerminalSettings.rehearse();
    TerminalDevice device =
        new TerminalDevice(
            new BufferedOutputStream(OutputStream.nullOutputStream(), FRAME_BYTES),
            charset,
            ScreenSize.USUAL);
    TerminalScreen screen = new TerminalScreen(device);
    screen.startScreen();
    Stage stage = new Stage(showing, screen, theme);
    stage.paint();
    Characters characters = new Characters(charset);
    KeyDecoder decoder = new KeyDecoder();
    long millis = 0;
    for (char one : typed.toCharArray()) {
      millis += AGES_MILLIS;
      stage.take(decoder.feed(characters.of(new byte[] {(byte) one})), millis);
      if (stage.busy()) {
        stage.work(() -> false);
      }
      stage.paint();
    }
    device.exitPrivateMode();
  }

  /** Shows this until it is over, then gives the terminal back. */
  public void show(Showing showing) throws IOException {
    show(showing, () -> {});
  }

  /**
   * Shows this until it is over, then gives the terminal back.
   *
   * @param shown is done as soon as the first frame stands there, and should only begin things
   */
  public void show(Showing showing, Runnable shown) throws IOException {
    try {
      TerminalScreen screen = terminal.open();
      Stage stage = new Stage(showing, screen, theme);
      terminal.paint(stage);
      shown.run();
      KeyReader.start(input, arrivals);
      WindowSignal.onChange(() -> arrivals.add(new Arrival.WindowChanged()));
      // The window may have changed before anybody listened.
      arrivals.add(new Arrival.WindowChanged());
      run(stage);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    } finally {
      terminal.giveBack();
    }
  }

  /** Has what is shown take in what came up beside the keys, then repaints; from any thread. */
  public void note() {
    arrivals.add(new Arrival.Noted());
  }

  private void run(Stage stage) throws IOException, InterruptedException {
    while (!stage.over()) {
      Arrival arrival = next(stage);
      if (arrival instanceof Arrival.Ended) {
        stage.take(List.of(new Key.Closed()), KeyReader.millis());
        return;
      }
      if (arrival instanceof Arrival.Bytes typed) {
        stage.take(decoder.feed(characters.of(typed.bytes())), typed.millis());
      } else if (arrival instanceof Arrival.WindowChanged) {
        fit(stage);
      } else if (arrival instanceof Arrival.Noted) {
        stage.noted();
      } else if (decoder.waiting()) {
        stage.take(decoder.silence(), KeyReader.millis());
      } else {
        stage.passed(KeyReader.millis());
      }
      while (stage.busy()) {
        terminal.paint(stage);
        stage.work(this::ignored);
      }
      if (arrivals.isEmpty() && !stage.over()) {
        terminal.paint(stage);
      }
    }
  }

  /**
   * Takes no notice of keys that came while something took its time. They are decoded all the same,
   * so that no half of a sequence is left over.
   */
  private boolean ignored() {
    List<Arrival> waiting = new ArrayList<>();
    arrivals.drainTo(waiting);
    boolean keys = false;
    for (Arrival arrival : waiting) {
      if (arrival instanceof Arrival.Bytes typed) {
        keys |= !decoder.feed(characters.of(typed.bytes())).isEmpty();
      } else {
        arrivals.add(arrival);
      }
    }
    return keys;
  }

  /** What arrives next; nothing where the rest of a sequence stays out or something is due. */
  private @Nullable Arrival next(Stage stage) throws InterruptedException {
    if (decoder.waiting()) {
      return arrivals.poll(KeyDecoder.SILENCE_MILLIS, TimeUnit.MILLISECONDS);
    }
    long wait = stage.waitMillis(KeyReader.millis());
    return wait < 0 ? arrivals.take() : arrivals.poll(wait, TimeUnit.MILLISECONDS);
  }

  private void fit(Stage stage) throws IOException {
    arrivals.removeIf(a -> a instanceof Arrival.WindowChanged);
    terminal.measure();
    stage.fit();
  }
}
