package closehand.plan;

import closehand.plan.Mixes.Mix;
import closehand.plan.demand.WantedAction;
import closehand.plan.explain.DeviceSets;
import closehand.plan.explain.ProblemEdits;
import closehand.plan.problem.PlanProblem;
import closehand.plan.solve.Budget;
import closehand.plan.solve.PlanOutcome;
import closehand.plan.supply.SuppliedInput;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/**
 * The best plan of every useful combination of controls within the parts allowed. Useful is one
 * whose plan uses all of its parts and asks for at most a quarter more than the best plan of all.
 */
final class Combinations {
  private static final int CONTROLS = 6;
  private static final int MUST = 3;
  private static final int QUARTER = 4;

  private final Planned best;
  private final Map<String, Integer> points;

  private Combinations(Planned best, Map<String, Integer> points) {
    this.best = best;
    this.points = points;
  }

  /**
   * The combinations, best first as {@link Mixes} ranks.
   *
   * @param best the best plan of all suggested controls
   * @param alone each control alone, best first; those far down are not combined
   * @param points points of the rules, by control
   */
  static List<Mix> of(Planned best, List<Mix> alone, Map<String, Integer> points, Budget each) {
    if (best.outcome().status() == PlanOutcome.Status.IMPOSSIBLE) {
      return List.of();
    }
    Combinations made = new Combinations(best, points);
    Set<String> controls = new TreeSet<>(best.plan().approaches());
    alone.stream().limit(CONTROLS).forEach(m -> controls.addAll(m.approaches()));
    Map<List<String>, Mix> found = new LinkedHashMap<>();
    long most = best.plan().cost() + best.plan().cost() / QUARTER;
    for (DeviceSets.SetPlan set : DeviceSets.rank(made.only(controls), each.withCutoff(most))) {
      Mix mix = made.mix(set.outcome());
      if (mix.approaches().size() > 1) {
        found.putIfAbsent(mix.approaches(), mix);
      }
    }
    List<Mix> mixes = new ArrayList<>(found.values());
    mixes.sort(Mix.RANKING);
    return mixes;
  }

  private PlanProblem only(Set<String> controls) {
    Set<String> devices = new HashSet<>();
    best.supply().inputs().stream()
        .filter(i -> controls.contains(i.approach()))
        .map(SuppliedInput::device)
        .forEach(devices::add);
    return ProblemEdits.onlyDevices(best.problem(), devices);
  }

  private Mix mix(PlanOutcome outcome) {
    Set<String> used = new TreeSet<>();
    outcome.plan().list().stream()
        .flatMap(p -> best.supply().input(p.slot().input()).stream())
        .map(SuppliedInput::approach)
        .forEach(used::add);
    Set<String> musts = new HashSet<>();
    Set<String> placed = new HashSet<>();
    for (WantedAction action : best.demand().actions()) {
      if (action.importance() == MUST) {
        musts.add(action.of());
      }
    }
    placed.addAll(musts);
    best.demand().actions().stream()
        .filter(a -> outcome.plan().of(a.id()).isEmpty())
        .forEach(a -> placed.remove(a.of()));
    int most = used.stream().mapToInt(a -> points.getOrDefault(a, 0)).max().orElse(0);
    return new Mix(List.copyOf(used), most, placed.size(), musts.size(), outcome.best());
  }
}
