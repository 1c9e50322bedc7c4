package closehand.plan.problem;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Which demands a plan does not keep. */
final class PlanBreaches {
  private final PlanProblem problem;
  private final Index index;
  private final PlacementRules rules;
  private final List<Breach> found = new ArrayList<>();

  PlanBreaches(PlanProblem problem, Index index, PlacementRules rules) {
    this.problem = problem;
    this.index = index;
    this.rules = rules;
  }

  List<Breach> of(
      Placements plan, Set<String> devices, Set<String> layers, Map<String, Load> loads) {
    single(plan);
    samePlaces(plan);
    layerButtons(plan, layers);
    equipment(plan, devices, layers);
    coPresses(plan);
    loads.forEach(this::load);
    wishes(plan);
    return List.copyOf(found);
  }

  private void add(Breach.Kind kind, String... ids) {
    found.add(new Breach(kind, List.of(ids)));
  }

  private void single(Placements plan) {
    Set<String> seen = new HashSet<>();
    for (Placement placement : plan.list()) {
      if (!seen.add(placement.action())) {
        add(Breach.Kind.PLACED_TWICE, placement.action());
      }
      rules
          .refusal(placement)
          .ifPresent(
              r ->
                  add(
                      Breach.Kind.IMPOSSIBLE,
                      placement.action(),
                      placement.slot().toString(),
                      r.name()));
    }
  }

  private void samePlaces(Placements plan) {
    Map<Slot, String> taken = new HashMap<>();
    for (Placement placement : plan.list()) {
      String other = taken.put(placement.slot(), placement.action());
      if (other != null) {
        add(Breach.Kind.SAME_PLACE, other, placement.action(), placement.slot().toString());
      }
    }
  }

  private void layerButtons(Placements plan, Set<String> layers) {
    Map<String, String> buttons = new HashMap<>();
    for (String layer : layers) {
      String other = buttons.put(index.layer(layer).button(), layer);
      if (other != null) {
        add(Breach.Kind.LAYERS_SHARE_BUTTON, other, layer);
      }
    }
    for (Placement placement : plan.list()) {
      String layer = buttons.get(placement.slot().input());
      if (layer != null) {
        add(Breach.Kind.LAYER_BUTTON_TAKEN, placement.action(), layer);
      }
    }
  }

  private void equipment(Placements plan, Set<String> devices, Set<String> layers) {
    Equipment equipment = problem.equipment();
    int parts =
        equipment.devices().stream()
            .filter(d -> devices.contains(d.id()))
            .mapToInt(Device::parts)
            .sum();
    if (parts > equipment.mostParts()) {
      add(Breach.Kind.TOO_MANY_PARTS, devices.toArray(String[]::new));
    }
    for (Pair pair : equipment.incompatible()) {
      if (devices.contains(pair.first()) && devices.contains(pair.second())) {
        add(Breach.Kind.DEVICES_INCOMPATIBLE, pair.first(), pair.second());
      }
    }
    Set<String> inUse = new HashSet<>();
    plan.list().forEach(p -> inUse.add(p.slot().input()));
    layers.forEach(l -> inUse.add(index.layer(l).button()));
    for (Pair pair : equipment.exclusive()) {
      if (inUse.contains(pair.first()) && inUse.contains(pair.second())) {
        add(Breach.Kind.INPUTS_EXCLUSIVE, pair.first(), pair.second());
      }
    }
  }

  private void coPresses(Placements plan) {
    Clashes clashes = new Clashes(problem);
    Map<String, Slot> slots = new HashMap<>();
    plan.list().forEach(p -> slots.put(p.action(), p.slot()));
    for (CoPress pair : problem.play().coPresses()) {
      Slot first = slots.get(pair.first());
      Slot second = slots.get(pair.second());
      if (first != null && second != null && clashes.ofSlots(first, second)) {
        add(Breach.Kind.CO_PRESS, pair.first(), pair.second());
      }
    }
  }

  private void load(String effector, Load load) {
    Effector.LoadLimit limit = index.effector(effector).limit();
    if (load.pressesTenths() > limit.pressesTenths()) {
      add(Breach.Kind.TOO_MANY_PRESSES, effector);
    }
    if (load.heldMillis() > limit.heldMillis()) {
      add(Breach.Kind.HELD_TOO_LONG, effector);
    }
  }

  private void wishes(Placements plan) {
    for (Wishes.Pin pin : problem.wishes().pins()) {
      boolean kept =
          plan.of(pin.action())
              .filter(p -> p.slot().equals(pin.slot()))
              .filter(p -> pin.mode().isEmpty() || pin.mode().get() == p.mode())
              .isPresent();
      if (!kept) {
        add(Breach.Kind.PIN_NOT_KEPT, pin.action());
      }
    }
    for (Action action : problem.play().actions()) {
      boolean must = problem.wishes().mustPlace().contains(action.id());
      if (must && plan.of(action.id()).isEmpty()) {
        add(Breach.Kind.MUST_BE_PLACED, action.id());
      }
    }
  }
}
