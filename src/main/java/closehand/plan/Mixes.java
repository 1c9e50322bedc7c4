package closehand.plan;

import closehand.plan.ControlPlan.Assignment;
import closehand.plan.demand.WantedAction;
import closehand.plan.solve.Budget;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Supplier;

/**
 * The suggested approaches compared by the plans they allow: each alone, and the best plan of all
 * of them with what each of its parts adds.
 *
 * <p>They are ranked by the rules first, then by how many actions that the game needs have a place,
 * then by effort.
 */
public final class Mixes {
  private static final int MUST = 3;

  private Mixes() {}

  /**
   * One way to play.
   *
   * @param approaches what it needs
   * @param points points of the rules, of its best approach
   * @param mustsPlaced actions the game needs that have a place
   * @param musts actions the game needs
   * @param cost points a minute
   */
  public record Mix(List<String> approaches, int points, int mustsPlaced, int musts, long cost) {
    public Mix {
      approaches = List.copyOf(approaches);
    }

    /** Rules first, then what the game needs, then effort. */
    static final Comparator<Mix> RANKING =
        Comparator.comparingInt((Mix m) -> -m.points())
            .thenComparingInt(m -> -m.mustsPlaced())
            .thenComparingLong(Mix::cost);
  }

  /**
   * What one approach adds to a plan.
   *
   * @param approach its id
   * @param broughtIn names of actions that have a place only with it
   * @param movedOff names of actions that it takes off other parts of the body
   * @param costWith points a minute with it
   * @param costWithout and without it
   */
  public record Added(
      String approach,
      List<String> broughtIn,
      List<String> movedOff,
      long costWith,
      long costWithout) {
    public Added {
      broughtIn = List.copyOf(broughtIn);
      movedOff = List.copyOf(movedOff);
    }
  }

  /**
   * The comparison of one game.
   *
   * @param best the best plan of all suggested approaches
   * @param alone each approach by itself, best first
   * @param together every useful combination of two and more, best first
   * @param added what each part of the best plan adds; empty when it has only one
   */
  public record Comparison(Planned best, List<Mix> alone, List<Mix> together, List<Added> added) {
    public Comparison {
      alone = List.copyOf(alone);
      together = List.copyOf(together);
      added = List.copyOf(added);
    }
  }

  /** Compares the approaches suggested for the game in this slot. */
  public static Comparison of(Planning planning, int slot, PlanAsk ask, Supplier<Budget> budget) {
    Map<String, Integer> points = planning.points(slot);
    List<String> suggested = ask.approaches().orElseGet(() -> planning.suggested(slot));
    Planned best = planning.plan(slot, ask, budget.get());
    List<Mix> alone = new ArrayList<>();
    for (String approach : suggested) {
      Planned plan = planning.plan(slot, ask.only(List.of(approach)), budget.get());
      if (!plan.plan().assignments().isEmpty()) {
        alone.add(mix(List.of(approach), points, plan));
      }
    }
    alone.sort(Mix.RANKING);
    List<Added> added = new ArrayList<>();
    List<String> used = best.plan().approaches();
    for (String approach : used.size() > 1 ? used : List.<String>of()) {
      List<String> others = used.stream().filter(a -> !a.equals(approach)).toList();
      added.add(added(approach, best, planning.plan(slot, ask.only(others), budget.get())));
    }
    return new Comparison(best, alone, Combinations.of(best, alone, points, budget.get()), added);
  }

  /** What one plan says of the approaches it was made with. */
  static Mix mix(List<String> approaches, Map<String, Integer> points, Planned planned) {
    List<String> musts =
        planned.demand().actions().stream()
            .filter(a -> a.importance() == MUST)
            .map(WantedAction::of)
            .distinct()
            .toList();
    long placed =
        musts.stream()
            .filter(m -> planned.plan().leftOut().stream().noneMatch(l -> l.action().equals(m)))
            .count();
    int most = approaches.stream().mapToInt(a -> points.getOrDefault(a, 0)).max().orElse(0);
    return new Mix(approaches, most, (int) placed, musts.size(), planned.plan().cost());
  }

  private static Added added(String approach, Planned with, Planned without) {
    Set<String> broughtIn = new LinkedHashSet<>();
    Map<String, String> before = new LinkedHashMap<>();
    Set<String> placedBefore = new HashSet<>();
    for (Assignment one : without.plan().assignments()) {
      before.put(one.id(), one.effector());
      placedBefore.add(one.action());
    }
    Set<String> moved = new LinkedHashSet<>();
    for (Assignment one : with.plan().assignments()) {
      String effector = before.get(one.id());
      // An action that moves in another way without it, by directions say, has a place all the
      // same.
      if (!placedBefore.contains(one.action())) {
        broughtIn.add(one.name());
      } else if (effector == null) {
        continue;
      } else if (one.approach().equals(approach) && !effector.equals(one.effector())) {
        moved.add(one.name());
      }
    }
    return new Added(
        approach,
        List.copyOf(broughtIn),
        List.copyOf(moved),
        with.plan().cost(),
        without.plan().cost());
  }
}
