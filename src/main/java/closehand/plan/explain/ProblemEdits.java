package closehand.plan.explain;

import closehand.plan.problem.Equipment;
import closehand.plan.problem.Input;
import closehand.plan.problem.Layer;
import closehand.plan.problem.PlanProblem;
import closehand.plan.problem.Play;
import closehand.plan.problem.Prices;
import closehand.plan.problem.Wishes;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** Problems with less in them; what refers to the missing part goes with it. */
public final class ProblemEdits {
  private ProblemEdits() {}

  /** The problem without one action. */
  public static PlanProblem without(PlanProblem problem, String action) {
    Play play = problem.play();
    Play fewer =
        new Play(
            play.actions().stream().filter(a -> !a.id().equals(action)).toList(),
            play.coPresses().stream()
                .filter(c -> !c.first().equals(action) && !c.second().equals(action))
                .toList(),
            play.conventions().stream()
                .filter(c -> !c.first().equals(action) && !c.second().equals(action))
                .toList());
    Wishes w = problem.wishes();
    Set<String> must = new HashSet<>(w.mustPlace());
    must.remove(action);
    Wishes wishes =
        new Wishes(
            w.pins().stream().filter(p -> !p.action().equals(action)).toList(),
            w.bans().stream().filter(p -> !p.action().equals(action)).toList(),
            must,
            w.habits().stream().filter(p -> !p.action().equals(action)).toList());
    Prices p = problem.prices();
    Prices prices =
        new Prices(
            p.leftOutPoints(),
            p.missPoints(),
            p.togglePoints(),
            p.waitPointsPerSecond(),
            p.longHoldMillis(),
            p.pairs().stream().filter(e -> !e.action().equals(action)).toList());
    return problem.with(fewer).with(wishes).with(prices);
  }

  /**
   * The problem with these devices only. Wishes for inputs of other devices are dropped, so that
   * plans of different devices can be compared.
   */
  public static PlanProblem onlyDevices(PlanProblem problem, Set<String> devices) {
    Equipment all = problem.equipment();
    List<Input> inputs = all.inputs().stream().filter(i -> devices.contains(i.device())).toList();
    Set<String> kept = new HashSet<>();
    inputs.forEach(i -> kept.add(i.id()));
    List<Layer> layers =
        all.layers().stream()
            .filter(l -> kept.contains(l.button()))
            .map(
                l ->
                    new Layer(
                        l.id(), l.button(), l.covers().stream().filter(kept::contains).toList()))
            .toList();
    Equipment fewer =
        new Equipment(
            all.devices(),
            inputs,
            layers,
            all.mostParts(),
            all.incompatible(),
            all.exclusive().stream()
                .filter(p -> kept.contains(p.first()) && kept.contains(p.second()))
                .toList());
    Set<String> keptLayers = new HashSet<>();
    layers.forEach(l -> keptLayers.add(l.id()));
    Wishes w = problem.wishes();
    Wishes wishes =
        new Wishes(
            w.pins().stream()
                .filter(
                    p ->
                        kept.contains(p.slot().input())
                            && p.slot().layer().map(keptLayers::contains).orElse(true))
                .toList(),
            w.bans().stream().filter(b -> kept.contains(b.input())).toList(),
            w.mustPlace(),
            w.habits().stream()
                .filter(
                    p ->
                        kept.contains(p.slot().input())
                            && p.slot().layer().map(keptLayers::contains).orElse(true))
                .toList());
    Prices p = problem.prices();
    Prices prices =
        new Prices(
            p.leftOutPoints(),
            p.missPoints(),
            p.togglePoints(),
            p.waitPointsPerSecond(),
            p.longHoldMillis(),
            p.pairs().stream().filter(e -> kept.contains(e.input())).toList());
    return problem.with(fewer).with(wishes).with(prices);
  }
}
