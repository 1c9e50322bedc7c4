package closehand.bench;

import closehand.interview.Interview;
import closehand.rules.RuleBook;
import closehand.rules.Variations;
import closehand.rules.next.Asking;
import closehand.rules.proof.DeepCheck;
import closehand.rules.why.Settled;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.util.Arrays;
import java.util.Locale;

/**
 * Processor time of one thread in place of wall time, for machines that are busy with other work:
 * the same things as {@link WhyBenchmark}, warm, median of 41 rounds, of the deep check 9.
 */
public final class CpuTimes {
  private static final int ROUNDS = 41;
  private static final int FEW_ROUNDS = 9;

  private CpuTimes() {}

  /** Prints a line for each. */
  public static void main(String[] arguments) throws IOException {
    WhyBenchmark bench = new WhyBenchmark();
    bench.read();
    RuleBook rules = bench.rules();
    Interview screened = bench.screened();
    time(
        "single changes of a whole case",
        ROUNDS,
        () -> Variations.of(rules, bench.whole()).singles());
    time("5,000 pairs", ROUNDS, () -> Variations.of(rules, bench.whole()).pairs(5_000));
    time("settled by", ROUNDS, () -> Settled.of(rules, bench.whole()));
    time("next question after the warning signs", ROUNDS, () -> Asking.next(rules, screened));
    time("deep check of the core bank", FEW_ROUNDS, () -> DeepCheck.of(rules.bank()));
  }

  private static void time(String name, int rounds, Runnable what) {
    ThreadMXBean threads = ManagementFactory.getThreadMXBean();
    for (int i = 0; i < rounds; i++) {
      what.run();
    }
    long[] nanoseconds = new long[rounds];
    for (int i = 0; i < rounds; i++) {
      long start = threads.getCurrentThreadCpuTime();
      what.run();
      nanoseconds[i] = threads.getCurrentThreadCpuTime() - start;
    }
    Arrays.sort(nanoseconds);
    System.out.printf(
        Locale.ROOT,
        "%-40s median %.1f ms, slowest %.1f ms%n",
        name,
        nanoseconds[rounds / 2] / 1e6,
        nanoseconds[rounds - 1] / 1e6);
  }
}
