package closehand.plan;

import closehand.plan.problem.Action;
import closehand.plan.problem.Effort;
import closehand.plan.problem.Equipment;
import closehand.plan.problem.Input;
import closehand.plan.problem.PairEffort;
import closehand.plan.problem.PlanProblem;
import closehand.plan.problem.Prices;
import closehand.plan.supply.Measured;
import java.util.List;
import java.util.Map;

/** Puts what was measured of single inputs into a problem. */
public final class MeasuredInputs {
  private static final int SURE = 1_000;
  private static final int SLOWEST_MILLIS = 10_000;

  private MeasuredInputs() {}

  /**
   * The problem with other times, misses and efforts of these inputs.
   *
   * @param measured by the id of the input; ids the problem does not have are passed over
   */
  public static PlanProblem in(PlanProblem problem, Map<String, Measured> measured) {
    if (measured.isEmpty()) {
      return problem;
    }
    Equipment all = problem.equipment();
    List<Input> inputs =
        all.inputs().stream()
            .map(i -> input(problem, i, measured.getOrDefault(i.id(), Measured.NOTHING)))
            .toList();
    Prices p = problem.prices();
    List<PairEffort> pairs =
        p.pairs().stream()
            .map(e -> pair(e, measured.getOrDefault(e.input(), Measured.NOTHING)))
            .toList();
    return problem
        .with(
            new Equipment(
                all.devices(),
                inputs,
                all.layers(),
                all.mostParts(),
                all.incompatible(),
                all.exclusive()))
        .with(
            new Prices(
                p.leftOutPoints(),
                p.missPoints(),
                p.togglePoints(),
                p.waitPointsPerSecond(),
                p.longHoldMillis(),
                pairs));
  }

  private static Input input(PlanProblem problem, Input input, Measured measured) {
    if (measured.equals(Measured.NOTHING)) {
      return input;
    }
    int reliability = input.reliabilityPerMille() - measured.moreMissesPerMille();
    return new Input(
        input.id(),
        input.name(),
        input.device(),
        input.effector(),
        input.can(),
        time(problem, input, measured.moreMillis()),
        input.latencyMillis(),
        scaled(input.effort(), measured.effortTimes()),
        Math.max(1, Math.min(SURE, reliability)),
        input.column(),
        input.row(),
        input.rocker());
  }

  /** Differences move an input between no two warnings of the game. */
  private static int time(PlanProblem problem, Input input, int more) {
    int latency = input.latencyMillis();
    int now = input.timeMillis() + latency;
    int above = SLOWEST_MILLIS + latency;
    int below = latency;
    for (Action action : problem.play().actions()) {
      int warning = action.warningMillis();
      if (warning >= now) {
        above = Math.min(above, warning);
      } else {
        below = Math.max(below, warning + 1);
      }
    }
    return Math.max(below, Math.min(above, now + more)) - latency;
  }

  private static PairEffort pair(PairEffort pair, Measured measured) {
    return measured.effortTimes() == 1
        ? pair
        : new PairEffort(
            pair.action(),
            pair.input(),
            scaled(pair.effort(), measured.effortTimes()),
            pair.extraPoints());
  }

  private static Effort scaled(Effort effort, double times) {
    return new Effort(
        (int) Math.min(Effort.MOST, Math.round(times * effort.pressMilliPoints())),
        (int) Math.min(Effort.MOST, Math.round(times * effort.holdMilliPointsPerSecond())));
  }
}
