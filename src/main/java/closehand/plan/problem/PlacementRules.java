package closehand.plan.problem;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Where one action can go by itself, what that costs, and what it loads on which effector.
 *
 * <p>With n times a minute (twice when toggled), held seconds q a minute, effort e a press and E a
 * second held, time t, latency l, reliability r and a layer button b:
 *
 * <pre>
 * cost = n e / r + q E + [layer] (n e_b + q_b E_b) + n (t + l + [layer] t_b) wait
 *        + n (1 - r) miss + [toggled] toggle + extra,     q_b = n (t_b + t) + q
 * </pre>
 *
 * <p>All in whole numbers, rounded half up once.
 */
public final class PlacementRules {
  private final PlanProblem problem;
  private final Index index;
  private final Clashes clashes;
  private final Set<String> layerButtons = new HashSet<>();
  private final Set<Wishes.Ban> bans;
  private final Map<Pair, PairEffort> pairs = new HashMap<>();

  /** The rules of one problem. */
  public PlacementRules(PlanProblem problem) {
    this.problem = problem;
    index = new Index(problem);
    clashes = new Clashes(problem);
    problem.equipment().layers().forEach(l -> layerButtons.add(l.button()));
    bans = Set.copyOf(problem.wishes().bans());
    problem.prices().pairs().forEach(p -> pairs.put(new Pair(p.action(), p.input()), p));
  }

  /** Every place there is: each input by itself, and on each layer that covers it. */
  public List<Slot> slots() {
    List<Slot> slots = new ArrayList<>();
    problem.equipment().inputs().forEach(i -> slots.add(Slot.base(i.id())));
    for (Layer layer : problem.equipment().layers()) {
      layer.covers().stream()
          .filter(i -> !layerButtons.contains(i))
          .forEach(i -> slots.add(Slot.on(i, layer.id())));
    }
    return slots;
  }

  /** Whether an action can have a place in some mode. */
  boolean fits(Action action, Slot slot) {
    return refusal(new Placement(action.id(), slot, Mode.AS_IS)).isEmpty()
        || refusal(new Placement(action.id(), slot, Mode.TOGGLED)).isEmpty();
  }

  /** Every placement of an action that is possible by itself. */
  public List<Placement> possible(String action) {
    List<Placement> found = new ArrayList<>();
    for (Slot slot : slots()) {
      for (Mode mode : Mode.values()) {
        Placement placement = new Placement(action, slot, mode);
        if (refusal(placement).isEmpty()) {
          found.add(placement);
        }
      }
    }
    return found;
  }

  /** For an action, how many places each reason rules out, the mode that is refused last. */
  public Map<Refusal, Integer> refused(String action) {
    Map<Refusal, Integer> counts = new EnumMap<>(Refusal.class);
    for (Slot slot : slots()) {
      Optional<Refusal> plain = refusal(new Placement(action, slot, Mode.AS_IS));
      Optional<Refusal> toggled = refusal(new Placement(action, slot, Mode.TOGGLED));
      if (plain.isPresent() && toggled.isPresent()) {
        Refusal told = toggled.get() == Refusal.TOGGLE_NOT_OFFERED ? plain.get() : toggled.get();
        counts.merge(told, 1, Integer::sum);
      }
    }
    return counts;
  }

  /** Why a placement is impossible by itself; empty when it is possible. */
  public Optional<Refusal> refusal(Placement placement) {
    Action action = index.action(placement.action());
    Input input = index.input(placement.slot());
    boolean toggled = placement.mode() == Mode.TOGGLED;
    if (bans.contains(new Wishes.Ban(action.id(), input.id()))) {
      return Optional.of(Refusal.BANNED);
    }
    if (!index.effector(input.effector()).usable()) {
      return Optional.of(Refusal.EFFECTOR_NOT_USABLE);
    }
    if (toggled && !(action.style() == Style.HOLD && action.toggleOffered())) {
      return Optional.of(Refusal.TOGGLE_NOT_OFFERED);
    }
    if (!input.can().contains(toggled ? Style.TAP : action.style())) {
      return Optional.of(Refusal.INPUT_CANNOT);
    }
    Optional<Refusal> layered =
        index.layer(placement.slot()).flatMap(l -> layerRefusal(action, input, l, toggled));
    if (layered.isPresent()) {
      return layered;
    }
    if (millis(placement) > action.warningMillis()) {
      return Optional.of(Refusal.TOO_SLOW);
    }
    return overloads(placement) ? Optional.of(Refusal.LOAD_TOO_HIGH) : Optional.empty();
  }

  private Optional<Refusal> layerRefusal(Action action, Input input, Layer layer, boolean toggled) {
    Input button = index.input(layer.button());
    if (!layer.covers().contains(input.id()) || layerButtons.contains(input.id())) {
      return Optional.of(Refusal.NOT_COVERED);
    }
    if (!index.effector(button.effector()).usable()) {
      return Optional.of(Refusal.EFFECTOR_NOT_USABLE);
    }
    if (action.style().isAxis() || action.style() == Style.REPEAT) {
      return Optional.of(Refusal.NOT_ON_LAYER);
    }
    boolean held = action.style().isHeld() && !toggled;
    if (held && action.holdMillis() > problem.prices().longHoldMillis()) {
      return Optional.of(Refusal.TOO_LONG_ON_LAYER);
    }
    return clashes.ofEffectors(input.effector(), button.effector())
        ? Optional.of(Refusal.LAYER_HOLDER_NEEDED)
        : Optional.empty();
  }

  /** From the wish to the effect, the button of the layer included, in milliseconds. */
  public int millis(Placement placement) {
    Input input = index.input(placement.slot());
    int layer = button(placement).map(Input::timeMillis).orElse(0);
    return input.timeMillis() + input.latencyMillis() + layer;
  }

  private Optional<Input> button(Placement placement) {
    return index.layer(placement.slot()).map(l -> index.input(l.button()));
  }

  private static long uses(Action action, Mode mode) {
    return (mode == Mode.TOGGLED ? 2L : 1L) * action.perMinuteTenths();
  }

  private static long heldMillis(Action action, Mode mode) {
    boolean held = action.style().isHeld() && mode == Mode.AS_IS;
    return held ? uses(action, mode) * action.holdMillis() / 10 : 0;
  }

  /** The load on the effector that works the input. */
  public Load load(Placement placement) {
    Action action = index.action(placement.action());
    return new Load(uses(action, placement.mode()), heldMillis(action, placement.mode()));
  }

  /** The load on the effector that holds the layer; none without a layer. */
  public Load layerLoad(Placement placement) {
    Action action = index.action(placement.action());
    Input input = index.input(placement.slot());
    return button(placement)
        .map(
            b -> {
              long uses = uses(action, placement.mode());
              long reach = uses * (b.timeMillis() + input.timeMillis()) / 10;
              return new Load(uses, reach + heldMillis(action, placement.mode()));
            })
        .orElse(Load.NONE);
  }

  private boolean overloads(Placement placement) {
    Effector worker = index.effector(index.input(placement.slot()).effector());
    return load(placement).isAbove(worker.limit())
        || button(placement)
            .filter(b -> layerLoad(placement).isAbove(index.effector(b.effector()).limit()))
            .isPresent();
  }

  /** What a placement costs. */
  public PlacementCost cost(Placement placement) {
    Action action = index.action(placement.action());
    Input input = index.input(placement.slot());
    long rel = input.reliabilityPerMille();
    long uses = uses(action, placement.mode());
    Load layerLoad = layerLoad(placement);
    Effort effort = effort(action, input);
    // every term in 1 / (1,000,000 rel) point
    long press = uses * effort.pressMilliPoints() * 100_000;
    long hold = heldMillis(action, placement.mode()) * effort.holdMilliPointsPerSecond() * rel;
    long layer =
        button(placement)
            .map(b -> effort(action, b))
            .map(
                e ->
                    (uses * e.pressMilliPoints() * 100
                            + layerLoad.heldMillis() * e.holdMilliPointsPerSecond())
                        * rel)
            .orElse(0L);
    long wait = uses * millis(placement) * problem.prices().waitPointsPerSecond() * 100 * rel;
    long misses =
        uses * (1000 - rel) * problem.prices().missPoints().get(action.importance()) * 1000 * rel;
    long toggle = placement.mode() == Mode.TOGGLED ? problem.prices().togglePoints() : 0;
    return Rounding.of(
        1_000_000 * rel, new long[] {press, hold, layer, wait, misses}, toggle, extra(placement));
  }

  private Effort effort(Action action, Input input) {
    PairEffort pair = pairs.get(new Pair(action.id(), input.id()));
    return pair == null ? input.effort() : pair.effort();
  }

  private long extra(Placement placement) {
    PairEffort pair = pairs.get(new Pair(placement.action(), placement.slot().input()));
    long habits =
        problem.wishes().habits().stream()
            .filter(h -> h.action().equals(placement.action()))
            .filter(h -> !h.slot().equals(placement.slot()))
            .mapToLong(Wishes.Habit::points)
            .sum();
    return habits + (pair == null ? 0 : pair.extraPoints());
  }
}
