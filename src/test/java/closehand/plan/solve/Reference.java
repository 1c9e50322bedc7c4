package closehand.plan.solve;

import closehand.plan.problem.Action;
import closehand.plan.problem.Convention;
import closehand.plan.problem.Effector;
import closehand.plan.problem.Effort;
import closehand.plan.problem.Input;
import closehand.plan.problem.Layer;
import closehand.plan.problem.Mode;
import closehand.plan.problem.Pair;
import closehand.plan.problem.Placement;
import closehand.plan.problem.Placements;
import closehand.plan.problem.PlanProblem;
import closehand.plan.problem.Slot;
import closehand.plan.problem.Style;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * The model written a second time, from its definition alone: what may be where, what it costs,
 * what clashes, and whether a whole plan is allowed. Shares no rule with the program; slow and
 * plain on purpose.
 */
public final class Reference {
  private static final MathContext EXACT = new MathContext(40);
  private final PlanProblem problem;
  private final Map<String, List<Spot>> spots = new HashMap<>();

  /** The model of one problem. */
  public Reference(PlanProblem problem) {
    this.problem = problem;
  }

  /** One place of one action with its numbers. */
  record Spot(
      Action action,
      Input input,
      Optional<Layer> layer,
      Optional<Input> button,
      boolean toggled,
      long cost) {
    boolean onLayer() {
      return layer.isPresent();
    }

    Placement placement() {
      Slot slot = new Slot(input.id(), layer.map(Layer::id));
      return new Placement(action.id(), slot, toggled ? Mode.TOGGLED : Mode.AS_IS);
    }

    long presses() {
      return (toggled ? 2L : 1L) * action.perMinuteTenths();
    }

    long held() {
      boolean lasts =
          Set.of(Style.HOLD, Style.ONE_AXIS, Style.TWO_AXES).contains(action.style()) && !toggled;
      return lasts ? (long) action.perMinuteTenths() * action.holdMillis() / 10 : 0;
    }

    long buttonHeld() {
      int reach = button.map(Input::timeMillis).orElse(0) + input.timeMillis();
      return presses() * reach / 10 + held();
    }
  }

  /** Where an action can go by itself. */
  List<Spot> spots(Action action) {
    return spots.computeIfAbsent(action.id(), id -> find(action));
  }

  private List<Spot> find(Action action) {
    List<Spot> found = new ArrayList<>();
    for (Input input : problem.equipment().inputs()) {
      for (boolean toggled : new boolean[] {false, true}) {
        add(found, action, input, Optional.empty(), toggled);
        for (Layer layer : problem.equipment().layers()) {
          if (layer.covers().contains(input.id()) && !isLayerButton(input)) {
            add(found, action, input, Optional.of(layer), toggled);
          }
        }
      }
    }
    return found;
  }

  private void add(List<Spot> found, Action a, Input i, Optional<Layer> layer, boolean toggled) {
    Optional<Input> button = layer.map(l -> input(l.button()));
    if (toggled && (a.style() != Style.HOLD || !a.toggleOffered())) {
      return;
    }
    if (!i.can().contains(toggled ? Style.TAP : a.style()) || !effector(i).usable()) {
      return;
    }
    int millis = i.timeMillis() + i.latencyMillis() + button.map(Input::timeMillis).orElse(0);
    boolean banned =
        problem.wishes().bans().stream()
            .anyMatch(x -> x.action().equals(a.id()) && x.input().equals(i.id()));
    if (millis > a.warningMillis() || banned) {
      return;
    }
    if (button.isPresent()) {
      Input b = button.get();
      boolean bad = a.style() == Style.REPEAT || a.style().ordinal() >= Style.ONE_AXIS.ordinal();
      boolean tooLong =
          a.style() == Style.HOLD && !toggled && a.holdMillis() > problem.prices().longHoldMillis();
      boolean busy = together(i.effector(), b.effector());
      if (bad || tooLong || busy || !effector(b).usable()) {
        return;
      }
    }
    Spot free = new Spot(a, i, layer, button, toggled, 0);
    found.add(new Spot(a, i, layer, button, toggled, cost(free)));
  }

  private long cost(Spot spot) {
    Action a = spot.action();
    Input i = spot.input();
    BigDecimal n = decimal(spot.presses()).divide(decimal(10), EXACT);
    BigDecimal q = decimal(spot.held()).divide(decimal(1000), EXACT);
    BigDecimal rel = decimal(i.reliabilityPerMille()).divide(decimal(1000), EXACT);
    BigDecimal sum = n.multiply(press(a, i)).divide(rel, EXACT).add(q.multiply(hold(a, i)));
    int millis = i.timeMillis() + i.latencyMillis();
    if (spot.button().isPresent()) {
      Input b = spot.button().get();
      BigDecimal qb = decimal(spot.buttonHeld()).divide(decimal(1000), EXACT);
      sum = sum.add(n.multiply(press(a, b))).add(qb.multiply(hold(a, b)));
      millis += b.timeMillis();
    }
    BigDecimal seconds = decimal(millis).divide(decimal(1000), EXACT);
    sum = sum.add(n.multiply(seconds).multiply(decimal(problem.prices().waitPointsPerSecond())));
    int miss = problem.prices().missPoints().get(a.importance());
    sum = sum.add(n.multiply(BigDecimal.ONE.subtract(rel)).multiply(decimal(10L * miss)));
    long whole = sum.setScale(0, RoundingMode.HALF_UP).longValueExact();
    return whole + (spot.toggled() ? problem.prices().togglePoints() : 0) + extra(spot);
  }

  private long extra(Spot spot) {
    long sum = 0;
    for (var pair : problem.prices().pairs()) {
      if (pair.action().equals(spot.action().id()) && pair.input().equals(spot.input().id())) {
        sum += pair.extraPoints();
      }
    }
    for (var habit : problem.wishes().habits()) {
      boolean mine = habit.action().equals(spot.action().id());
      sum += mine && !habit.slot().equals(spot.placement().slot()) ? habit.points() : 0;
    }
    return sum;
  }

  private Effort effort(Action a, Input i) {
    return problem.prices().pairs().stream()
        .filter(p -> p.action().equals(a.id()) && p.input().equals(i.id()))
        .map(p -> p.effort())
        .findFirst()
        .orElse(i.effort());
  }

  private BigDecimal press(Action a, Input i) {
    return decimal(effort(a, i).pressMilliPoints()).divide(decimal(1000), EXACT);
  }

  private BigDecimal hold(Action a, Input i) {
    return decimal(effort(a, i).holdMilliPointsPerSecond()).divide(decimal(1000), EXACT);
  }

  private static BigDecimal decimal(long value) {
    return BigDecimal.valueOf(value);
  }

  private Input input(String id) {
    return problem.equipment().inputs().stream()
        .filter(i -> i.id().equals(id))
        .findFirst()
        .orElseThrow();
  }

  private Effector effector(Input input) {
    return problem.body().effectors().stream()
        .filter(e -> e.id().equals(input.effector()))
        .findFirst()
        .orElseThrow();
  }

  private boolean isLayerButton(Input input) {
    return problem.equipment().layers().stream().anyMatch(l -> l.button().equals(input.id()));
  }

  private boolean together(String e, String f) {
    return e.equals(f) || is(problem.body().coupled(), e, f);
  }

  private static boolean is(List<Pair> pairs, String a, String b) {
    return pairs.stream()
        .anyMatch(
            p ->
                (p.first().equals(a) && p.second().equals(b))
                    || (p.first().equals(b) && p.second().equals(a)));
  }

  /** Whether two spots cannot be worked at the same moment. */
  boolean clash(Spot p, Spot q) {
    boolean cross = p.input().rocker() != 0 && p.input().rocker() == q.input().rocker();
    if (!cross && together(p.input().effector(), q.input().effector())) {
      return true;
    }
    if (p.onLayer() && q.onLayer()) {
      return !p.layer().equals(q.layer()) || holds(p, q) || holds(q, p);
    }
    if (p.onLayer() || q.onLayer()) {
      Spot on = p.onLayer() ? p : q;
      Spot off = p.onLayer() ? q : p;
      return on.layer().orElseThrow().covers().contains(off.input().id()) || holds(on, off);
    }
    return false;
  }

  private static boolean holds(Spot on, Spot other) {
    return on.button().orElseThrow().effector().equals(other.input().effector());
  }

  boolean mustBeTogether(Action a, Action b) {
    return problem.play().coPresses().stream()
        .anyMatch(
            c ->
                (c.first().equals(a.id()) && c.second().equals(b.id()))
                    || (c.first().equals(b.id()) && c.second().equals(a.id())));
  }

  /** What a pair of spots costs by conventions. */
  long near(Spot p, Spot q) {
    long sum = 0;
    for (Convention c : problem.play().conventions()) {
      if (c.first().equals(p.action().id()) && c.second().equals(q.action().id())) {
        sum += (long) c.weightPoints() * steps(c.kind(), p, q);
      } else if (c.first().equals(q.action().id()) && c.second().equals(p.action().id())) {
        sum += (long) c.weightPoints() * steps(c.kind(), q, p);
      }
    }
    return sum;
  }

  /** How many steps two spots are away from what a convention wishes. */
  static int steps(Convention.Kind kind, Spot p, Spot q) {
    boolean same = p.input().device().equals(q.input().device()) && p.layer().equals(q.layer());
    int dx = q.input().column() - p.input().column();
    int dy = q.input().row() - p.input().row();
    int dist = Math.max(Math.abs(dx), Math.abs(dy));
    if (kind == Convention.Kind.APART) {
      return same && dist < 2 ? 4 : 0;
    }
    if (!same) {
      return 4;
    }
    int steps = Math.max(0, dist - (kind == Convention.Kind.NEAR ? 1 : 2));
    if (kind == Convention.Kind.ABOVE) {
      steps += (dy <= 0 ? 2 : 0) + (Math.abs(dx) > 1 ? 1 : 0);
    }
    if (kind == Convention.Kind.LEFT) {
      steps += (dx <= 0 ? 2 : 0) + (Math.abs(dy) > 1 ? 1 : 0);
    }
    return Math.min(4, steps);
  }

  /** The spots of a plan; a placement that does not exist is a broken demand by itself. */
  List<Spot> spots(Placements plan) {
    List<Spot> found = new ArrayList<>();
    for (Placement placement : plan.list()) {
      problem.play().actions().stream()
          .filter(a -> a.id().equals(placement.action()))
          .flatMap(a -> spots(a).stream())
          .filter(s -> s.placement().equals(placement))
          .forEach(found::add);
    }
    return found;
  }

  /** Every demand a plan breaks, in words; none for an allowed plan. */
  public List<String> broken(Placements plan) {
    List<Spot> spots = spots(plan);
    List<String> found = new ArrayList<>();
    if (spots.size() != plan.list().size()) {
      found.add("a placement that is not possible by itself");
    }
    found.addAll(pairsBroken(spots));
    found.addAll(equipmentBroken(spots));
    for (Effector e : problem.body().effectors()) {
      if (presses(e, spots) > e.limit().pressesTenths()
          || held(e, spots) > e.limit().heldMillis()) {
        found.add("load of " + e.id());
      }
    }
    for (var pin : problem.wishes().pins()) {
      if (plan.list().stream()
          .noneMatch(
              p ->
                  p.action().equals(pin.action())
                      && p.slot().equals(pin.slot())
                      && pin.mode().map(m -> m == p.mode()).orElse(true))) {
        found.add("pin of " + pin.action());
      }
    }
    for (String must : problem.wishes().mustPlace()) {
      if (plan.list().stream().noneMatch(p -> p.action().equals(must))) {
        found.add("left out " + must);
      }
    }
    return found;
  }

  private List<String> pairsBroken(List<Spot> spots) {
    List<String> found = new ArrayList<>();
    for (int i = 0; i < spots.size(); i++) {
      for (int j = 0; j < i; j++) {
        Spot p = spots.get(i);
        Spot q = spots.get(j);
        if (p.action().equals(q.action())) {
          found.add("twice " + p.action().id());
        }
        if (p.input().equals(q.input()) && p.layer().equals(q.layer())) {
          found.add("same place " + p.input().id());
        }
        if (mustBeTogether(p.action(), q.action()) && clash(p, q)) {
          found.add("not together " + p.action().id() + " " + q.action().id());
        }
      }
    }
    return found;
  }

  private List<String> equipmentBroken(List<Spot> spots) {
    List<String> found = new ArrayList<>();
    Set<Layer> layers = new HashSet<>();
    Set<String> inputs = new HashSet<>();
    Set<String> taken = new HashSet<>();
    for (Spot spot : spots) {
      inputs.add(spot.input().id());
      taken.add(spot.input().id());
      if (spot.onLayer()) {
        layers.add(spot.layer().orElseThrow());
      }
    }
    Set<String> buttons = new HashSet<>();
    for (Layer layer : layers) {
      if (!buttons.add(layer.button()) || taken.contains(layer.button())) {
        found.add("button of " + layer.id());
      }
    }
    inputs.addAll(buttons);
    Set<String> devices = devices(inputs);
    int parts = 0;
    for (var d : problem.equipment().devices()) {
      parts += devices.contains(d.id()) ? d.parts() : 0;
    }
    if (parts > problem.equipment().mostParts()) {
      found.add("parts");
    }
    for (Pair pair : problem.equipment().incompatible()) {
      if (devices.contains(pair.first()) && devices.contains(pair.second())) {
        found.add("devices " + pair);
      }
    }
    for (Pair pair : problem.equipment().exclusive()) {
      if (inputs.contains(pair.first()) && inputs.contains(pair.second())) {
        found.add("inputs " + pair);
      }
    }
    return found;
  }

  private Set<String> devices(Set<String> inputs) {
    Set<String> devices = new HashSet<>();
    inputs.forEach(i -> devices.add(input(i).device()));
    return devices;
  }

  private static long presses(Effector e, List<Spot> spots) {
    long sum = 0;
    for (Spot s : spots) {
      sum += s.input().effector().equals(e.id()) ? s.presses() : 0;
      sum += s.button().map(Input::effector).equals(Optional.of(e.id())) ? s.presses() : 0;
    }
    return sum;
  }

  private static long held(Effector e, List<Spot> spots) {
    long sum = 0;
    for (Spot s : spots) {
      sum += s.input().effector().equals(e.id()) ? s.held() : 0;
      sum += s.button().map(Input::effector).equals(Optional.of(e.id())) ? s.buttonHeld() : 0;
    }
    return sum;
  }

  /** What a plan costs, in points. */
  public long cost(Placements plan) {
    List<Spot> spots = spots(plan);
    Set<String> inputs = new HashSet<>();
    long sum = 0;
    for (int i = 0; i < spots.size(); i++) {
      Spot spot = spots.get(i);
      sum += spot.cost();
      inputs.add(spot.input().id());
      if (spot.onLayer()) {
        inputs.add(spot.button().orElseThrow().id());
      }
      for (int j = 0; j < i; j++) {
        sum += near(spots.get(j), spot);
      }
    }
    for (Action a : problem.play().actions()) {
      boolean placed = spots.stream().anyMatch(s -> s.action().equals(a));
      sum += placed ? 0 : problem.prices().leftOutPoints().get(a.importance());
    }
    Set<String> devices = devices(inputs);
    for (var d : problem.equipment().devices()) {
      sum += devices.contains(d.id()) ? d.setUpPoints() : 0;
    }
    return sum + amber(spots);
  }

  private long amber(List<Spot> spots) {
    BigDecimal sum = BigDecimal.ZERO;
    for (Effector e : problem.body().effectors()) {
      if (e.amber().isPresent()) {
        var amber = e.amber().get();
        long presses = Math.max(0, presses(e, spots) - amber.from().pressesTenths());
        long held = Math.max(0, held(e, spots) - amber.from().heldMillis());
        // prices of one unit are kept in whole 1/1024 points
        BigDecimal perPress = unit(amber.pointsPerPress(), 10);
        BigDecimal perMilli = unit(amber.pointsPerHeldSecond(), 1000);
        sum = sum.add(perPress.multiply(decimal(presses))).add(perMilli.multiply(decimal(held)));
      }
    }
    return sum.divide(decimal(1024), EXACT).setScale(0, RoundingMode.HALF_UP).longValueExact();
  }

  private static BigDecimal unit(int points, int units) {
    return decimal(points * 1024L).divide(decimal(units), EXACT).setScale(0, RoundingMode.HALF_UP);
  }
}
