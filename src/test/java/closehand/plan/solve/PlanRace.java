package closehand.plan.solve;

import closehand.plan.problem.PlanProblem;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * Measures the search against the general solver in one run, by {@code docs/measure-plan.sh}. The
 * general solver gets one worker and full linear relaxation; ours runs in the same Java, each
 * instance once to warm up and then five times, of which the middle time counts.
 */
final class PlanRace {
  private static final double MOST_SECONDS = 30;
  private static final int REPEATS = 5;

  private PlanRace() {}

  /** Takes {@code race} or {@code tight}. */
  public static void main(String[] arguments) {
    if (arguments.length > 0 && arguments[0].equals("tight")) {
      for (String name : List.of("t7500", "t7504", "t7506", "t7515", "t7517", "x8040", "x8042")) {
        ours(name);
        within(name, 1);
        within(name, 5);
      }
      return;
    }
    boolean natives = CpSatOracle.isAvailable();
    for (String size : List.of("small", "medium", "large")) {
      List<Double> shares = new ArrayList<>();
      for (int i = 1; i <= 6; i++) {
        PlanProblem problem = Instances.read(size + i);
        double own = ours(size + i);
        double other = natives ? general(problem) : Double.NaN;
        shares.add(other / own);
        say("%s%d own %.3f s, general %.2f s, %.0f times", size, i, own, other, other / own);
      }
      shares.sort(Double::compare);
      say("%s: in the middle %.1f times", size, (shares.get(2) + shares.get(3)) / 2);
    }
  }

  private static double ours(String name) {
    PlanProblem problem = Instances.read(name);
    List<Double> times = new ArrayList<>();
    for (int repeat = 0;
        repeat <= REPEATS && !name.startsWith("t") && !name.startsWith("x");
        repeat++) {
      long begin = System.nanoTime();
      PlanOutcome outcome = ControlPlanSolver.solve(problem, Budget.ORDINARY, Optional.empty());
      times.add((System.nanoTime() - begin) / 1e9);
      if (outcome.status() != PlanOutcome.Status.PROVED) {
        say("%s not proved", name);
      }
    }
    if (times.isEmpty()) {
      ControlPlanSolver.solve(problem, Budget.ORDINARY.withNodes(200), Optional.empty());
      return 0;
    }
    List<Double> warm = new ArrayList<>(times.subList(1, times.size()));
    warm.sort(Double::compare);
    return warm.get(REPEATS / 2);
  }

  private static double general(PlanProblem problem) {
    long begin = System.nanoTime();
    Optional<CpSatOracle.Answer> answer = CpSatOracle.solve(problem, MOST_SECONDS);
    double seconds = (System.nanoTime() - begin) / 1e9;
    if (answer.isEmpty() || !answer.get().proved()) {
      say("the general solver proved nothing within %.0f s", MOST_SECONDS);
    }
    return seconds;
  }

  private static void within(String name, int seconds) {
    long end = System.nanoTime() + seconds * 1_000_000_000L;
    PlanOutcome outcome =
        ControlPlanSolver.solve(
            Instances.read(name),
            Budget.ORDINARY.withNodes(1_000_000).stoppedBy(() -> System.nanoTime() > end),
            Optional.empty());
    double gap = 100.0 * (outcome.best() - outcome.bound()) / outcome.best();
    say(
        "%s after %d s: best %d, gap %.2f %%, %s, %d nodes",
        name, seconds, outcome.best(), gap, outcome.status(), outcome.nodes());
  }

  private static void say(String format, Object... values) {
    System.out.println(String.format(Locale.ROOT, format, values));
  }
}
