package closehand.plan.solve;

import closehand.plan.problem.Action;
import closehand.plan.problem.CoPress;
import closehand.plan.problem.Input;
import closehand.plan.problem.Layer;
import closehand.plan.problem.Placement;
import closehand.plan.problem.PlacementRules;
import closehand.plan.problem.Placements;
import closehand.plan.problem.PlanPricer;
import closehand.plan.problem.PlanProblem;
import closehand.plan.problem.Slot;
import closehand.plan.problem.Wishes;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * A problem as arrays of numbers: actions, places and placements have indexes, costs are in 1/1024
 * point. The placements of action a are {@code first[a]} to {@code first[a + 1] - 1}.
 */
final class Tables {
  /** One point. */
  static final long POINT = PlanPricer.PARTS;

  /** The cost of what cannot be. */
  static final long NEVER = Long.MAX_VALUE / 1024;

  final PlanProblem problem;
  final PlacementRules rules;
  final List<Slot> slots;
  final int[] slotInput;
  final int[] slotLayer;

  /** For each place the set of devices it needs, that of the layer's button included. */
  final long[] slotDevices;

  /** What using each device costs. */
  final long[] setUp;

  final int actions;
  final int[] first;
  final Placement[] placement;
  final int[] action;
  final int[] slot;
  final long[] cost;

  /** What leaving an action out costs, or {@link #NEVER}. */
  final long[] leftOut;

  /** For each action the set of actions that must be possible together with it. */
  final long[] partners;

  final Signatures signatures;
  final LoadRows loads;
  final Conventions conventions;

  /** The arrays of a problem that passed its check. */
  Tables(PlanProblem problem) {
    this.problem = problem;
    rules = new PlacementRules(problem);
    slots = rules.slots();
    slotInput = new int[slots.size()];
    slotLayer = new int[slots.size()];
    slotDevices = new long[slots.size()];
    setUp =
        problem.equipment().devices().stream().mapToLong(d -> POINT * d.setUpPoints()).toArray();
    indexSlots();
    List<Action> all = problem.play().actions();
    actions = all.size();
    first = new int[actions + 1];
    leftOut = new long[actions];
    placement = placements(all);
    action = new int[placement.length];
    slot = new int[placement.length];
    cost = new long[placement.length];
    Map<Slot, Integer> slotIndex = new HashMap<>();
    slots.forEach(s -> slotIndex.put(s, slotIndex.size()));
    for (int a = 0; a < actions; a++) {
      for (int p = first[a]; p < first[a + 1]; p++) {
        action[p] = a;
        slot[p] = slotIndex.getOrDefault(placement[p].slot(), -1);
        cost[p] = POINT * rules.cost(placement[p]).total();
      }
    }
    partners = partners(all);
    signatures = new Signatures(this);
    loads = new LoadRows(this);
    conventions = new Conventions(this);
  }

  private void indexSlots() {
    Map<String, Integer> devices = new HashMap<>();
    Map<String, Integer> inputs = new HashMap<>();
    Map<String, Integer> layers = new HashMap<>();
    Map<String, Long> deviceOf = new HashMap<>();
    Map<String, Long> holderOf = new HashMap<>();
    problem.equipment().devices().forEach(d -> devices.put(d.id(), devices.size()));
    for (Input input : problem.equipment().inputs()) {
      inputs.put(input.id(), inputs.size());
      deviceOf.put(input.id(), 1L << devices.getOrDefault(input.device(), 0));
    }
    for (Layer layer : problem.equipment().layers()) {
      layers.put(layer.id(), layers.size());
      holderOf.put(layer.id(), deviceOf.getOrDefault(layer.button(), 0L));
    }
    for (int s = 0; s < slots.size(); s++) {
      Slot slot = slots.get(s);
      slotInput[s] = inputs.getOrDefault(slot.input(), -1);
      slotLayer[s] = slot.layer().map(l -> layers.getOrDefault(l, -1)).orElse(-1);
      slotDevices[s] =
          deviceOf.getOrDefault(slot.input(), 0L)
              | slot.layer().map(l -> holderOf.getOrDefault(l, 0L)).orElse(0L);
    }
  }

  private Placement[] placements(List<Action> all) {
    List<Placement> found = new ArrayList<>();
    Wishes wishes = problem.wishes();
    for (int a = 0; a < actions; a++) {
      String id = all.get(a).id();
      List<Wishes.Pin> pins = wishes.pins().stream().filter(p -> p.action().equals(id)).toList();
      rules.possible(id).stream()
          .filter(p -> pins.stream().allMatch(pin -> keeps(p, pin)))
          .forEach(found::add);
      first[a + 1] = found.size();
      boolean must = !pins.isEmpty() || wishes.mustPlace().contains(id);
      leftOut[a] =
          must ? NEVER : POINT * problem.prices().leftOutPoints().get(all.get(a).importance());
    }
    return found.toArray(Placement[]::new);
  }

  private static boolean keeps(Placement placement, Wishes.Pin pin) {
    return placement.slot().equals(pin.slot())
        && (pin.mode().isEmpty() || pin.mode().get() == placement.mode());
  }

  private long[] partners(List<Action> all) {
    Map<String, Integer> index = new HashMap<>();
    all.forEach(a -> index.put(a.id(), index.size()));
    long[] found = new long[actions];
    for (CoPress pair : problem.play().coPresses()) {
      int a = index.getOrDefault(pair.first(), -1);
      int b = index.getOrDefault(pair.second(), -1);
      found[a] |= 1L << b;
      found[b] |= 1L << a;
    }
    return found;
  }

  /** Whether two placements of different actions cannot both be in a plan. */
  boolean clash(int p, int q) {
    return slot[p] == slot[q]
        || ((partners[action[p]] >> action[q] & 1) != 0
            && signatures.clash(signatures.of[p], signatures.of[q]));
  }

  /** A plan from the chosen placement of each action, -1 where it is left out. */
  Placements plan(int[] chosen) {
    List<Placement> list = new ArrayList<>();
    for (int p : chosen) {
      if (p >= 0) {
        list.add(placement[p]);
      }
    }
    return new Placements(list);
  }

  /** The chosen placement of each action, -1 where it is left out or no longer possible. */
  int[] chosen(Placements plan) {
    int[] chosen = new int[actions];
    java.util.Arrays.fill(chosen, -1);
    Map<Placement, Integer> index = new HashMap<>();
    for (int p = 0; p < placement.length; p++) {
      index.put(placement[p], p);
    }
    for (Placement wanted : plan.list()) {
      Integer p = index.get(wanted);
      if (p != null) {
        chosen[action[p]] = p;
      }
    }
    return chosen;
  }
}
