package closehand.plan;

import closehand.plan.Mixes.Mix;
import closehand.plan.solve.Budget;
import closehand.rules.Advice;
import closehand.rules.Standing;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Suggested approaches that the rules give the same points, told apart by the plans that each
 * allows alone: how many actions that the wanted games need have a place, then how much that asks
 * of the body. More points always come first; what no plan can be made of keeps its place.
 *
 * @param groups approaches of equal points, the most points first, each group of two or more in its
 *     order by plans
 */
public record EqualStandings(List<List<Mix>> groups) {
  /** Nothing stands equal, or nobody looked. */
  public static final EqualStandings NONE = new EqualStandings(List.of());

  /** By how many needed actions have a place, then by effort. */
  private static final Comparator<Mix> BY_PLANS =
      Comparator.comparingInt((Mix m) -> -m.mustsPlaced()).thenComparingLong(Mix::cost);

  public EqualStandings {
    groups = groups.stream().map(List::copyOf).toList();
  }

  /**
   * Compares what stands equal.
   *
   * @param advice the advice for all games together
   * @param budget how hard to look for each plan; work, not time, so that every run agrees
   */
  public static EqualStandings of(Planning planning, Advice advice, Budget budget) {
    List<Integer> slots = planning.slots();
    Map<Integer, List<Standing>> byPoints = new LinkedHashMap<>();
    advice.suggestions().stream()
        .filter(s -> Planning.isPlanned(s.approach()))
        .forEach(s -> byPoints.computeIfAbsent(s.points(), p -> new ArrayList<>()).add(s));
    List<List<Mix>> groups = new ArrayList<>();
    for (List<Standing> equal : byPoints.values()) {
      if (equal.size() > 1 && !slots.isEmpty()) {
        List<Mix> mixes = new ArrayList<>();
        equal.forEach(s -> mixes.add(alone(planning, slots, s, budget)));
        mixes.sort(BY_PLANS);
        groups.add(mixes);
      }
    }
    return new EqualStandings(groups);
  }

  /** One approach alone in every game, needed actions and effort added up. */
  private static Mix alone(
      Planning planning, List<Integer> slots, Standing standing, Budget budget) {
    List<String> approach = List.of(standing.approach().id());
    int placed = 0;
    int musts = 0;
    long cost = 0;
    for (int slot : slots) {
      Planned plan = planning.plan(slot, PlanAsk.USUAL.only(approach), budget);
      Mix mix = Mixes.mix(approach, Map.of(), plan);
      placed += mix.mustsPlaced();
      musts += mix.musts();
      cost += mix.cost();
    }
    return new Mix(approach, standing.points(), placed, musts, cost);
  }

  /** The advice with approaches of equal points in their order by plans. */
  public Advice in(Advice advice) {
    List<Standing> order = new ArrayList<>(advice.standings());
    for (List<Mix> group : groups) {
      List<String> ids = group.stream().map(m -> m.approaches().get(0)).toList();
      List<Integer> places = new ArrayList<>();
      for (int i = 0; i < order.size(); i++) {
        if (ids.contains(order.get(i).approach().id())) {
          places.add(i);
        }
      }
      List<Standing> equal = places.stream().map(order::get).toList();
      for (int i = 0; i < places.size() && places.size() == ids.size(); i++) {
        String next = ids.get(i);
        order.set(
            places.get(i),
            equal.stream().filter(s -> s.approach().id().equals(next)).findFirst().orElseThrow());
      }
    }
    return advice.inOrder(order);
  }

  /** The group this approach stands in, where others have the same points. */
  public Optional<List<Mix>> group(String approach) {
    return groups.stream()
        .filter(g -> g.stream().anyMatch(m -> m.approaches().contains(approach)))
        .findFirst();
  }
}
