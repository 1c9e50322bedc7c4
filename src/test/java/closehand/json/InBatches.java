package closehand.json;

import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;

import java.time.Duration;
import org.junit.jupiter.api.function.ThrowingConsumer;

/** Runs one check for many seeds, in batches small enough to tell a hang from a slow machine. */
final class InBatches {
  private static final int BATCH = 100;

  /** A hundred small files take well under a second; this is for a machine at its worst. */
  private static final Duration HANGS = Duration.ofMinutes(2);

  private InBatches() {}

  /** Runs the check for every seed from 1 to {@code last}. */
  static void seeds(int last, ThrowingConsumer<Integer> check) {
    for (int from = 1; from <= last; from += BATCH) {
      int first = from;
      int end = Math.min(last, from + BATCH - 1);
      assertTimeoutPreemptively(
          HANGS,
          () -> {
            for (int seed = first; seed <= end; seed++) {
              check.accept(seed);
            }
          },
          "hangs at a seed from " + first + " to " + end);
    }
  }
}
