package closehand.plan.problem;

import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * All that decides whether two places clash.
 *
 * @param effector what works the input
 * @param rocker its cross, or 0
 * @param layer the layer, if any
 * @param covering for an input by itself, the layers that would change its meaning
 */
public record KindOfPlace(
    String effector, int rocker, Optional<String> layer, List<String> covering) {

  /** The kind of one place. */
  public static KindOfPlace of(Slot slot, Input input, Equipment equipment) {
    List<String> covering =
        slot.layer().isPresent()
            ? List.of()
            : equipment.layers().stream()
                .filter(l -> l.covers().contains(slot.input()))
                .map(Layer::id)
                .toList();
    return new KindOfPlace(input.effector(), input.rocker(), slot.layer(), covering);
  }

  /** The kinds of all places that some action could have. */
  static Set<KindOfPlace> all(PlanProblem problem) {
    Map<String, Input> inputs = new HashMap<>();
    problem.equipment().inputs().forEach(i -> inputs.put(i.id(), i));
    PlacementRules rules = new PlacementRules(problem);
    Set<KindOfPlace> kinds = new LinkedHashSet<>();
    for (Slot slot : rules.slots()) {
      Input input = inputs.get(slot.input());
      if (input != null && problem.play().actions().stream().anyMatch(a -> rules.fits(a, slot))) {
        kinds.add(of(slot, input, problem.equipment()));
      }
    }
    return kinds;
  }
}
