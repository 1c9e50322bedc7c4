package closehand.screen.terminal;

import java.io.IOException;
import java.io.InputStream;
import java.util.Arrays;
import java.util.concurrent.BlockingQueue;

/** Waits for the keyboard on a thread of its own; does nothing at all while nobody types. */
final class KeyReader implements Runnable {
  private static final int PIECE = 4096;

  private final InputStream input;
  private final BlockingQueue<Arrival> arrivals;

  private KeyReader(InputStream input, BlockingQueue<Arrival> arrivals) {
    this.input = input;
    this.arrivals = arrivals;
  }

  /** Starts to read; the thread keeps no program alive. */
  static void start(InputStream input, BlockingQueue<Arrival> arrivals) {
    Thread thread = new Thread(new KeyReader(input, arrivals), "keys");
    thread.setDaemon(true);
    thread.start();
  }

  @Override
  public void run() {
    byte[] piece = new byte[PIECE];
    try {
      for (int read = input.read(piece); read >= 0; read = input.read(piece)) {
        arrivals.add(new Arrival.Bytes(Arrays.copyOf(piece, read), millis()));
      }
    } catch (IOException e) {
      // A terminal that is gone cannot be read; that is the end like any other.
    }
    arrivals.add(new Arrival.Ended());
  }

  /** Now, on a clock that only goes forward. */
  static long millis() {
    return System.nanoTime() / 1_000_000;
  }
}
