package closehand.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import closehand.measure.practice.Findings;
import closehand.measure.practice.Reckoning;
import closehand.measure.practice.Sheet;
import closehand.measure.practice.Signal;
import closehand.measure.practice.SimulatedPlayer;
import closehand.measure.practice.Try;
import closehand.plan.problem.Placements;
import closehand.plan.problem.PlanPricer;
import closehand.plan.problem.PlanProblem;
import closehand.plan.solve.Budget;
import closehand.plan.supply.Measured;
import closehand.plan.supply.SuppliedInput;
import closehand.report.practice.Measures;
import closehand.report.practice.Offered;
import closehand.report.practice.PracticeSheets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/**
 * The whole loop with players of whom everything is known: plan, practise, measure, plan again. A
 * plan changed by what practice found must not cost its player more than the old one.
 */
class PracticeLoopTest {
  private static final Budget QUICK = Budget.ORDINARY.withNodes(60).withTolerance(50);
  private static final int PLAYERS = 200;
  private static final int DAYS = 3;

  /** What the true body would make of a problem, with nothing drawn or rounded by practice. */
  private static Map<String, Measured> truth(
      SimulatedPlayer player, Planned planned, Findings findings) {
    Map<String, Measured> truth = new HashMap<>();
    for (SuppliedInput input : planned.supply().inputs()) {
      SimulatedPlayer.Truth one = player.truth(input.id());
      int believed = 1000 - planned.supply().body().get(input.effector()).reliabilityPerMille();
      truth.put(
          input.id(),
          new Measured(
              (int) Math.round(findings.usualMillis() * (one.times() - 1)),
              (int) Math.round(1000 * one.missShare()) - believed,
              Math.min(Measured.MOST_TIMES, Math.max(1, Math.pow(1 + one.dropARound(), 3)))));
    }
    return truth;
  }

  private static Map<String, Signal> signals(Planned planned) {
    Map<String, Signal> signals = new LinkedHashMap<>();
    char next = '!';
    for (SuppliedInput input : PracticeSheets.inputs(planned)) {
      signals.put(input.id(), Signal.key(String.valueOf(next++)));
    }
    return signals;
  }

  private static long cost(PlanProblem problem, Placements plan) {
    return new PlanPricer(problem).price(plan).cost().total();
  }

  @Test
  void aPlanChangedAfterPracticeNeverCostsItsPlayerMoreBeyondNoise() {
    List<Planned> plans = new ArrayList<>();
    Map<Planned, Planning> by = new HashMap<>();
    for (String id : List.of("GC1", "GC2", "GC4", "GC5")) {
      Planning planning = Player.gold(id).planning();
      Planned planned = planning.plan(planning.slots().get(0), PlanAsk.USUAL, QUICK);
      plans.add(planned);
      by.put(planned, planning);
    }
    int changed = 0;
    int better = 0;
    List<String> worse = new ArrayList<>();
    for (int seed = 0; seed < PLAYERS; seed++) {
      Planned planned = plans.get(seed % plans.size());
      SimulatedPlayer player =
          new SimulatedPlayer(
                  planned.supply().inputs().stream().map(SuppliedInput::id).toList(), seed)
              .troubled(5);
      Sheet sheet = PracticeSheets.of(planned, signals(planned));
      List<List<Try>> runs = new ArrayList<>();
      for (int day = 0; day < DAYS; day++) {
        runs.add(player.practises(sheet, 3, DAYS * seed + day).counted());
      }
      Findings findings = Reckoning.together(runs);
      Replanned replanned =
          by.get(planned).again(planned, Measures.of(findings, planned.supply()), QUICK);
      PlanProblem real = MeasuredInputs.in(replanned.bare(), truth(player, planned, findings));
      long before = cost(real, replanned.before());
      Replanned now = replanned;
      long noise = 0;
      for (List<Offered> offers = Offered.of(now, findings, planned.supply(), seed);
          offers.stream().anyMatch(Offered::firm);
          offers = Offered.of(now, findings, planned.supply(), seed)) {
        Offered first = offers.stream().filter(Offered::firm).findFirst().orElseThrow();
        noise += first.high() - first.low();
        now = now.taking(first.change());
      }
      long after = cost(real, now.before());
      if (!now.before().equals(replanned.before())) {
        changed++;
        better += after < before ? 1 : 0;
      }
      if (after > before + noise) {
        worse.add("seed " + seed + ": " + before + " to " + after + ", noise " + noise);
      }
    }
    assertEquals(List.of(), worse);
    assertTrue(changed > PLAYERS / 20, "practice changed " + changed);
    assertTrue(better >= 0.9 * changed, better + " of " + changed);
  }
}
