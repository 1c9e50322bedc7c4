package closehand.plan;

import closehand.bank.PlanFigures;
import closehand.plan.demand.Demand;
import closehand.plan.demand.WantedAction;
import closehand.plan.problem.Action;
import closehand.plan.problem.Body;
import closehand.plan.problem.CoPress;
import closehand.plan.problem.Device;
import closehand.plan.problem.Effector;
import closehand.plan.problem.Effort;
import closehand.plan.problem.Equipment;
import closehand.plan.problem.Input;
import closehand.plan.problem.Layer;
import closehand.plan.problem.Pair;
import closehand.plan.problem.PlanProblem;
import closehand.plan.problem.Play;
import closehand.plan.problem.Prices;
import closehand.plan.problem.Wishes;
import closehand.plan.supply.BodyPart;
import closehand.plan.supply.SuppliedDevice;
import closehand.plan.supply.SuppliedInput;
import closehand.plan.supply.Supply;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Puts a supply and a demand together into a problem for the search. */
final class ProblemMaker {
  /** Rank in the search of each importance: 5 is what a game cannot be played without. */
  private static final List<Integer> RANK = List.of(1, 2, 4, Action.ESSENTIAL);

  private final PlanFigures figures;
  private final Supply supply;
  private final Demand demand;
  private final List<SuppliedInput> inputs;
  private final Set<String> inputIds = new HashSet<>();

  private ProblemMaker(PlanFigures figures, Supply supply, Demand demand) {
    this.figures = figures;
    this.supply = supply;
    this.demand = demand;
    this.inputs = Useful.of(supply, demand);
    inputs.forEach(i -> inputIds.add(i.id()));
  }

  /** Whether the game takes what the input says. */
  static boolean fits(SuppliedInput input, Demand demand) {
    return demand.takes(input.speaks()) && (!input.needsCursor() || demand.cursor().orElse(true));
  }

  /** The problem; wishes hold only what is impossible for this body. */
  static PlanProblem of(PlanFigures figures, Supply supply, Demand demand) {
    return new ProblemMaker(figures, supply, demand).problem();
  }

  private PlanProblem problem() {
    Efforts efforts = new Efforts(figures, supply);
    Prices prices =
        new Prices(
            figures.prices().leftOutPoints(),
            figures.prices().missTenths(),
            figures.prices().togglePoints(),
            figures.prices().waitPointsPerSecond(),
            figures.prices().longHoldOnLayerMilliseconds(),
            efforts.pairs(demand.actions(), inputs));
    Wishes wishes =
        new Wishes(
            List.of(), new Impossible(supply).bans(demand.actions(), inputs), Set.of(), List.of());
    PlanProblem told = new PlanProblem(play(), equipment(), body(), prices, wishes);
    return MeasuredInputs.in(told, supply.measured());
  }

  private Play play() {
    List<Action> actions = new ArrayList<>();
    List<CoPress> together = new ArrayList<>();
    for (WantedAction wanted : demand.actions()) {
      actions.add(
          new Action(
              wanted.id(),
              wanted.name(),
              wanted.style(),
              (int) Math.round(10 * wanted.perMinute()),
              (int) Math.round(1000 * wanted.holdSeconds()),
              warning(wanted.urgency()),
              RANK.get(wanted.importance()),
              wanted.toggleOffered()));
      for (String other : wanted.pressedWith()) {
        if (wanted.id().compareTo(other) < 0) {
          together.add(new CoPress(wanted.id(), other));
        }
      }
    }
    return new Play(actions, together, new Habits(figures).conventions(demand));
  }

  private int warning(int urgency) {
    int milliseconds = figures.time().urgencyMilliseconds().get(urgency);
    return milliseconds == 0 ? Action.NO_HURRY : milliseconds;
  }

  private Equipment equipment() {
    Set<String> used = new HashSet<>();
    inputs.forEach(i -> used.add(i.device()));
    List<SuppliedDevice> devices =
        supply.devices().stream().filter(d -> used.contains(d.id())).toList();
    return new Equipment(
        devices.stream()
            .map(d -> new Device(d.id(), d.name(), d.setUpPoints(), d.halfParts()))
            .toList(),
        inputs.stream().map(this::input).toList(),
        layers(),
        supply.halfParts(),
        incompatible(devices),
        supply.exclusive().stream()
            .filter(p -> inputIds.contains(p.first()) && inputIds.contains(p.second()))
            .toList());
  }

  private Input input(SuppliedInput input) {
    BodyPart part = part(input);
    int press = (int) Math.round(1000 * figures.effort().pointsPerPress());
    int hold = (int) Math.round(1000 * figures.effort().pointsPerHeldSecond());
    return new Input(
        input.id(),
        input.name(),
        input.device(),
        input.effector(),
        input.can(),
        part.pressMillis(),
        input.latencyMillis(),
        new Effort(press, hold),
        part.reliabilityPerMille(),
        input.column(),
        input.row(),
        input.rocker());
  }

  private BodyPart part(SuppliedInput input) {
    BodyPart part = supply.body().get(input.effector());
    if (part == null) {
      throw new IllegalArgumentException("an input without its part of the body: " + input.id());
    }
    return part;
  }

  private List<Layer> layers() {
    return supply.layers().stream()
        .filter(l -> inputIds.contains(l.button()))
        .map(
            l ->
                new Layer(
                    l.id(), l.button(), l.covers().stream().filter(inputIds::contains).toList()))
        .filter(l -> !l.covers().isEmpty())
        .toList();
  }

  private static List<Pair> incompatible(List<SuppliedDevice> devices) {
    List<Pair> pairs = new ArrayList<>();
    for (int i = 0; i < devices.size(); i++) {
      for (int j = i + 1; j < devices.size(); j++) {
        if (devices.get(i).clashes(devices.get(j))) {
          pairs.add(new Pair(devices.get(i).id(), devices.get(j).id()));
        }
      }
    }
    return pairs;
  }

  private Body body() {
    List<Effector> effectors = new ArrayList<>();
    for (BodyPart part : supply.body().values()) {
      effectors.add(
          new Effector(
              part.id(),
              part.id(),
              true,
              new Effector.LoadLimit(part.mostPressesTenths(), part.mostHeldMillis()),
              Optional.of(
                  new Effector.Amber(
                      new Effector.LoadLimit(part.greenPressesTenths(), part.greenHeldMillis()),
                      figures.load().amberPointsPerPress(),
                      figures.load().amberPointsPerHeldSecond()))));
    }
    return new Body(effectors, supply.coupled());
  }
}
