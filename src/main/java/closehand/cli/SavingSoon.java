package closehand.cli;

import closehand.interview.Interview;
import closehand.interview.Measured;
import closehand.measure.practice.PracticeRecord;
import closehand.plan.PlanChanges;
import closehand.report.Diary;
import closehand.strain.OwnLimits;
import java.io.IOException;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.atomic.AtomicReference;

/**
 * Saves a case on a thread of its own, so that a face can repaint before the disk has answered.
 *
 * <p>What happened is taken in at once and the writing begins at once; it ends within moments. The
 * next save waits for it, so that never more than the last answer is missing on the disk. Trouble
 * with a save wakes whoever asked for that, and is told at the next save too. When the case is
 * closed the last of it has been written.
 */
final class SavingSoon implements Kept {
  /** A disk that takes longer keeps nobody waiting; one write then covers several answers. */
  private static final int LONGEST_WAIT_SECONDS = 1;

  private final StoredCase kept;
  private final AtomicBoolean waiting = new AtomicBoolean();
  private final AtomicReference<Optional<IOException>> trouble =
      new AtomicReference<>(Optional.empty());
  private volatile Runnable wake = () -> {};
  private Optional<Future<?>> latest = Optional.empty();
  private Optional<ExecutorService> writer = Optional.empty();

  SavingSoon(StoredCase kept) {
    this.kept = kept;
  }

  /**
   * Has this run, on the thread that writes, whenever a save failed and when one succeeds again. It
   * should do no more than wake a face that then asks for {@link #unsaved}.
   */
  void whenTroubleChanges(Runnable next) {
    wake = next;
  }

  @Override
  public String name() {
    return kept.name();
  }

  @Override
  public void save(Interview interview) throws IOException {
    awaitLatest();
    kept.takeIn(interview);
    // What came of the save before; this one is not waited for.
    Optional<IOException> last = unsaved();
    if (waiting.compareAndSet(/* expectedValue= */ false, /* newValue= */ true)) {
      latest = Optional.of(running().submit(this::write));
    }
    if (last.isPresent()) {
      throw last.get();
    }
  }

  /** The answer before is on the disk, or has failed to get there, when the next is taken in. */
  private void awaitLatest() {
    try {
      if (latest.isPresent()) {
        latest.get().get(LONGEST_WAIT_SECONDS, TimeUnit.SECONDS);
      }
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    } catch (ExecutionException | TimeoutException e) {
      // The next write has everything that this one should have had.
    }
  }

  @Override
  public List<Measured> measured() {
    return kept.measured();
  }

  @Override
  public Diary diary() {
    return kept.diary();
  }

  @Override
  public PlanChanges changes() {
    return kept.changes();
  }

  @Override
  public void change(PlanChanges changes) {
    kept.change(changes);
  }

  @Override
  public OwnLimits limits() {
    return kept.limits();
  }

  @Override
  public List<PracticeRecord> practised() {
    return kept.practised();
  }

  private ExecutorService running() {
    ExecutorService running =
        writer.orElseGet(() -> Executors.newSingleThreadExecutor(SavingSoon::thread));
    writer = Optional.of(running);
    return running;
  }

  /** A program that ends otherwise than by closing its cases does not wait for this thread. */
  private static Thread thread(Runnable work) {
    Thread thread = new Thread(work, "save");
    thread.setDaemon(true);
    return thread;
  }

  @Override
  public Optional<IOException> unsaved() {
    return Objects.requireNonNull(trouble.get());
  }

  private void write() {
    waiting.set(false);
    Optional<IOException> before = unsaved();
    Optional<IOException> now = Optional.empty();
    try {
      kept.write();
    } catch (IOException e) {
      now = Optional.of(e);
    }
    trouble.set(now);
    if (before.isPresent() || now.isPresent()) {
      wake.run();
    }
  }

  /** Waits until nothing is left to write. */
  void finish() {
    writer.ifPresent(ExecutorService::shutdown);
    boolean done = writer.isEmpty();
    while (!done) {
      try {
        done = writer.get().awaitTermination(1, TimeUnit.HOURS);
      } catch (InterruptedException e) {
        Thread.currentThread().interrupt();
        done = true;
      }
    }
    writer = Optional.empty();
  }

  @Override
  public String trouble(IOException e) {
    return kept.trouble(e);
  }

  @Override
  public void delete() throws IOException {
    kept.delete();
  }
}
