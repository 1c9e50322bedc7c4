package closehand.plan;

import closehand.measure.practice.Findings;
import closehand.measure.practice.PracticeRun;
import closehand.measure.practice.Reckoning;
import closehand.measure.practice.Sheet;
import closehand.measure.practice.Signal;
import closehand.measure.practice.SimulatedPlayer;
import closehand.plan.solve.Budget;
import closehand.plan.supply.SuppliedInput;
import closehand.report.practice.Measures;
import closehand.report.practice.Offered;
import closehand.report.practice.PracticeSheets;
import java.lang.management.ManagementFactory;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** How long it takes from a finished practice run to the changes it speaks for, in one warm JVM. */
final class PracticeTimes {
  private static final Budget AS_THE_COMMAND = Budget.ORDINARY.withNodes(400).withTolerance(20);

  private PracticeTimes() {}

  public static void main(String[] arguments) {
    List<Double> wall = new ArrayList<>();
    List<Double> processor = new ArrayList<>();
    for (String id : Player.ids()) {
      Planning planning = Player.gold(id).maybePlanning(Map.of()).orElse(null);
      if (planning == null) {
        continue;
      }
      for (int slot : planning.slots()) {
        Planned planned = planning.plan(slot, PlanAsk.USUAL, AS_THE_COMMAND);
        for (long seed = 0; seed < 5; seed++) {
          PracticeRun run = run(planned, seed);
          long cpu = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
          long begun = System.nanoTime();
          Findings findings = Reckoning.of(run.counted());
          Replanned again =
              planning.again(planned, Measures.of(findings, planned.supply()), AS_THE_COMMAND);
          Offered.of(again, findings, planned.supply(), seed);
          wall.add((System.nanoTime() - begun) / 1e9);
          processor.add(
              (ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime() - cpu) / 1e9);
        }
      }
    }
    print("wall time, s", wall);
    print("processor time, s", processor);
  }

  private static PracticeRun run(Planned planned, long seed) {
    Map<String, Signal> signals = new LinkedHashMap<>();
    for (SuppliedInput input : PracticeSheets.inputs(planned)) {
      signals.put(input.id(), Signal.key("k" + signals.size()));
    }
    Sheet sheet = PracticeSheets.of(planned, signals);
    List<String> inputs = planned.supply().inputs().stream().map(SuppliedInput::id).toList();
    return new SimulatedPlayer(inputs, seed).troubled(5).practises(sheet, 3, seed);
  }

  private static void print(String what, List<Double> all) {
    List<Double> sorted = all.stream().sorted().toList();
    System.out.printf(
        java.util.Locale.ROOT,
        "%s: %d runs, median %.2f, 95 of 100 within %.2f, most %.2f%n",
        what,
        sorted.size(),
        sorted.get(sorted.size() / 2),
        sorted.get(sorted.size() * 95 / 100),
        sorted.get(sorted.size() - 1));
  }
}
