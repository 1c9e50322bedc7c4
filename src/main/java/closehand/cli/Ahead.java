package closehand.cli;

import java.util.Optional;
import java.util.function.Supplier;

/**
 * Something made beside the rest of a start, so that a machine with two cores is ready sooner. What
 * comes out does not depend on which is ready first.
 */
final class Ahead<T> {
  private final Thread thread;
  private boolean begun;
  private Optional<T> made = Optional.empty();
  private Optional<RuntimeException> trouble = Optional.empty();

  private Ahead(String name, Supplier<T> maker) {
    thread = new Thread(new Making<>(this, maker), name);
    thread.setDaemon(true);
  }

  /** Begins to make it. */
  static <T> Ahead<T> begin(String name, Supplier<T> maker) {
    Ahead<T> ahead = new Ahead<>(name, maker);
    ahead.begin();
    return ahead;
  }

  /** Makes it as soon as somebody says so or needs it. */
  static <T> Ahead<T> later(String name, Supplier<T> maker) {
    return new Ahead<>(name, maker);
  }

  /** Begins to make it, unless that has begun. */
  synchronized void begin() {
    if (!begun) {
      begun = true;
      thread.start();
    }
  }

  /** A class of its own: the first lambda of a run takes Java longer than all of this. */
  private record Making<T>(Ahead<T> ahead, Supplier<T> maker) implements Runnable {
    @Override
    public void run() {
      ahead.make(maker);
    }
  }

  private void make(Supplier<T> maker) {
    try {
      made = Optional.of(maker.get());
    } catch (RuntimeException e) {
      trouble = Optional.of(e);
    }
  }

  /** What was made, once it is; or the exception that came instead. */
  T get() {
    begin();
    boolean interrupted = false;
    while (thread.isAlive()) {
      try {
        thread.join();
      } catch (InterruptedException e) {
        interrupted = true;
      }
    }
    if (interrupted) {
      Thread.currentThread().interrupt();
    }
    if (trouble.isPresent()) {
      throw trouble.get();
    }
    return made.orElseThrow();
  }
}
