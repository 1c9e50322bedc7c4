package closehand.plan.problem;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/** Prices and judges a given plan from the raw data, however the plan came about. */
public final class PlanPricer {
  /** Parts of a point in which loads above amber are added up. */
  public static final long PARTS = 1024;

  private final PlanProblem problem;
  private final PlacementRules rules;
  private final Index index;

  /** A pricer for one problem. */
  public PlanPricer(PlanProblem problem) {
    this.problem = problem;
    rules = new PlacementRules(problem);
    index = new Index(problem);
  }

  /** The rules for single placements that this pricer goes by. */
  public PlacementRules rules() {
    return rules;
  }

  /** Prices and judges a plan. Ids the problem does not have are a mistake of the caller. */
  public Pricing price(Placements plan) {
    Map<String, Load> loads = loads(plan);
    Set<String> layers = layers(plan);
    Set<String> devices = devices(plan, layers);
    List<Breach> breaches =
        new PlanBreaches(problem, index, rules).of(plan, devices, layers, loads);
    return new Pricing(cost(plan, devices, loads), breaches, loads, devices, layers);
  }

  /** What a plan costs, whether it is allowed or not: quicker than to judge it too. */
  public PlanCost cost(Placements plan) {
    return cost(plan, devices(plan, layers(plan)), loads(plan));
  }

  private PlanCost cost(Placements plan, Set<String> devices, Map<String, Load> loads) {
    Sum sum = new Sum();
    Set<String> placed = new HashSet<>();
    for (Placement placement : plan.list()) {
      sum.add(rules.cost(placement));
      placed.add(placement.action());
    }
    long leftOut =
        problem.play().actions().stream()
            .filter(a -> !placed.contains(a.id()))
            .mapToLong(a -> problem.prices().leftOutPoints().get(a.importance()))
            .sum();
    long setUp =
        problem.equipment().devices().stream()
            .filter(d -> devices.contains(d.id()))
            .mapToLong(Device::setUpPoints)
            .sum();
    long amber =
        loads.entrySet().stream()
            .mapToLong(e -> amberParts(index.effector(e.getKey()), e.getValue()))
            .sum();
    return new PlanCost(
        sum.total(), leftOut, setUp, conventions(plan), (2 * amber + PARTS) / (2 * PARTS));
  }

  private long conventions(Placements plan) {
    Map<String, Slot> slots = new LinkedHashMap<>();
    plan.list().forEach(p -> slots.put(p.action(), p.slot()));
    long sum = 0;
    for (Convention convention : problem.play().conventions()) {
      Slot first = slots.get(convention.first());
      Slot second = slots.get(convention.second());
      if (first != null && second != null) {
        sum += (long) convention.weightPoints() * steps(convention.kind(), first, second);
      }
    }
    return sum;
  }

  /** How many steps, 0 to 4, two places are away from what a convention wishes. */
  public int steps(Convention.Kind kind, Slot first, Slot second) {
    Input a = index.input(first);
    Input b = index.input(second);
    boolean together = a.device().equals(b.device()) && first.layer().equals(second.layer());
    return Steps.between(kind, together, b.column() - a.column(), b.row() - a.row());
  }

  /** What a load above amber costs, in parts of a point. */
  public static long amberParts(Effector effector, Load load) {
    return effector
        .amber()
        .map(
            a ->
                Math.max(0, load.pressesTenths() - a.from().pressesTenths()) * pressParts(a)
                    + Math.max(0, load.heldMillis() - a.from().heldMillis()) * heldParts(a))
        .orElse(0L);
  }

  /** Parts of a point for each tenth of a press above amber, rounded to a whole part. */
  public static long pressParts(Effector.Amber amber) {
    return (amber.pointsPerPress() * PARTS + 5) / 10;
  }

  /** Parts of a point for each millisecond above amber, rounded to a whole part. */
  public static long heldParts(Effector.Amber amber) {
    return (amber.pointsPerHeldSecond() * PARTS + 500) / 1000;
  }

  private Map<String, Load> loads(Placements plan) {
    Map<String, Load> loads = new LinkedHashMap<>();
    for (Placement placement : plan.list()) {
      String worker = index.input(placement.slot()).effector();
      loads.merge(worker, rules.load(placement), Load::plus);
      index
          .layer(placement.slot())
          .map(l -> index.input(l.button()).effector())
          .ifPresent(holder -> loads.merge(holder, rules.layerLoad(placement), Load::plus));
    }
    return loads;
  }

  private static Set<String> layers(Placements plan) {
    Set<String> used = new TreeSet<>();
    plan.list().stream().map(p -> p.slot().layer()).flatMap(Optional::stream).forEach(used::add);
    return used;
  }

  private Set<String> devices(Placements plan, Set<String> layers) {
    List<String> inputs = new ArrayList<>();
    plan.list().forEach(p -> inputs.add(p.slot().input()));
    layers.forEach(l -> inputs.add(index.layer(l).button()));
    Set<String> used = new TreeSet<>();
    inputs.forEach(i -> used.add(index.input(i).device()));
    return used;
  }

  /** Adds up placements term by term. */
  private static final class Sum {
    private PlacementCost sum = new PlacementCost(0, 0, 0, 0, 0, 0, 0);

    void add(PlacementCost c) {
      sum =
          new PlacementCost(
              sum.press() + c.press(),
              sum.hold() + c.hold(),
              sum.layer() + c.layer(),
              sum.waiting() + c.waiting(),
              sum.miss() + c.miss(),
              sum.toggle() + c.toggle(),
              sum.extra() + c.extra());
    }

    PlacementCost total() {
      return sum;
    }
  }
}
