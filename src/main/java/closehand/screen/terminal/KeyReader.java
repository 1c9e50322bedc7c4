package closehand.screen.terminal;

import java.io.FileDescriptor;
import java.io.FileInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.util.Arrays;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.atomic.AtomicReference;

/**
 * Waits for the keyboard on a thread of its own; does nothing at all while nobody types.
 *
 * <p>A thread that waits for the process's keyboard cannot be called back. So there is one for all
 * screens of a process, one after the other: otherwise that of a screen that is closed would take
 * the first key meant for the next.
 */
final class KeyReader implements Runnable {
  private static final int PIECE = 4096;
  private static final AtomicReference<Optional<KeyReader>> OF_PROCESS =
      new AtomicReference<>(Optional.empty());

  private final InputStream input;
  private BlockingQueue<Arrival> arrivals;
  private boolean ended;

  private KeyReader(InputStream input, BlockingQueue<Arrival> arrivals) {
    this.input = input;
    this.arrivals = arrivals;
  }

  /** Starts to read; the thread keeps no program alive. */
  static void start(InputStream input, BlockingQueue<Arrival> arrivals) {
    if (isOfProcess(input)) {
      ofProcess(input, arrivals);
    } else {
      begin(new KeyReader(input, arrivals));
    }
  }

  private static boolean isOfProcess(InputStream input) {
    try {
      return input instanceof FileInputStream file && file.getFD() == FileDescriptor.in;
    } catch (IOException e) {
      return false;
    }
  }

  private static synchronized void ofProcess(InputStream input, BlockingQueue<Arrival> arrivals) {
    Optional<KeyReader> running = Objects.requireNonNull(OF_PROCESS.get());
    if (running.isPresent()) {
      running.get().handTo(arrivals);
    } else {
      KeyReader reader = new KeyReader(input, arrivals);
      OF_PROCESS.set(Optional.of(reader));
      begin(reader);
    }
  }

  private static void begin(KeyReader reader) {
    Thread thread = new Thread(reader, "keys");
    thread.setDaemon(true);
    thread.start();
  }

  /** From now on keys go there; what is over stays over. */
  private synchronized void handTo(BlockingQueue<Arrival> next) {
    arrivals = next;
    if (ended) {
      next.add(new Arrival.Ended());
    }
  }

  private synchronized void arrived(Arrival arrival) {
    ended |= arrival instanceof Arrival.Ended;
    arrivals.add(arrival);
  }

  @Override
  public void run() {
    byte[] piece = new byte[PIECE];
    try {
      for (int read = input.read(piece); read >= 0; read = input.read(piece)) {
        arrived(new Arrival.Bytes(Arrays.copyOf(piece, read), millis()));
      }
    } catch (IOException e) {
      // A terminal that is gone cannot be read; that is the end like any other.
    }
    arrived(new Arrival.Ended());
  }

  /** Now, on a clock that only goes forward. */
  static long millis() {
    return System.nanoTime() / 1_000_000;
  }
}
