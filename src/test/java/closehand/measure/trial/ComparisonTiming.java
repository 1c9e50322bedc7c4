package closehand.measure.trial;

import closehand.json.TrialReader;
import closehand.json.TrialWriter;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Random;

/** Times the comparison of two set-ups with ten trials each; run by docs/measure-compare.sh. */
final class ComparisonTiming {
  private ComparisonTiming() {}

  /** Prints the first comparison of this run of Java and the middle of 21 later ones. */
  public static void main(String[] arguments) {
    // Read from a case first, as the program always does.
    List<Trial> trials =
        TrialReader.read(invented().stream().map(TrialWriter::object).toList(), new ArrayList<>());
    List<Double> milliseconds = new ArrayList<>();
    List<Double> processor = new ArrayList<>();
    ThreadMXBean threads = ManagementFactory.getThreadMXBean();
    for (int i = 0; i < 22; i++) {
      long used = threads.getCurrentThreadCpuTime();
      long before = System.nanoTime();
      SideBySide both = SideBySide.of(trials, "A", "B");
      milliseconds.add((System.nanoTime() - before) / 1e6);
      processor.add((threads.getCurrentThreadCpuTime() - used) / 1e6);
      if (!both.success().figures().orElseThrow().chance().exact()) {
        throw new IllegalStateException("not counted");
      }
    }
    say("wall time", milliseconds);
    say("processor time", processor);
  }

  private static void say(String what, List<Double> milliseconds) {
    List<Double> later = milliseconds.subList(1, milliseconds.size()).stream().sorted().toList();
    System.out.printf(
        Locale.ROOT,
        "%s: first %.1f ms, middle of the later ones %.1f ms%n",
        what,
        milliseconds.get(0),
        later.get(later.size() / 2));
  }

  private static List<Trial> invented() {
    Random random = new Random(13);
    List<Trial> trials = new ArrayList<>();
    for (int i = 0; i < 20; i++) {
      List<Tries> actions = new ArrayList<>();
      for (String action : List.of("steer", "brake", "boost")) {
        actions.add(new Tries(action, OptionalInt.of(random.nextInt(11))));
      }
      int pain = random.nextInt(3);
      trials.add(
          Trial.begun("2026-11-25")
              .with(SetUp.named(i % 2 == 0 ? "A" : "B"))
              .withActions(actions)
              .feeling(
                  Felt.UNSAID.withPain(1),
                  OptionalInt.empty(),
                  Felt.UNSAID.withPain(pain).withEffort(random.nextInt(11)))
              .lasting(OptionalInt.of(12), OptionalInt.of(random.nextInt(11)), "")
              .ended(Optional.empty(), true));
    }
    return trials;
  }
}
