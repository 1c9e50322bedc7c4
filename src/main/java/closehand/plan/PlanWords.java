package closehand.plan;

import closehand.bank.Approach;
import closehand.bank.Bank;
import closehand.bank.PlanFigures;
import closehand.plan.ControlPlan.Assignment;
import closehand.plan.ControlPlan.EffectorLoad;
import closehand.plan.ControlPlan.LeftOut;
import closehand.plan.ControlPlan.Light;
import closehand.plan.ControlPlan.Mode;
import closehand.plan.ControlPlan.RunnerUp;
import closehand.plan.ControlPlan.Shared;
import closehand.plan.ControlPlan.Sureness;
import closehand.plan.demand.Demand;
import closehand.plan.demand.Settled;
import closehand.plan.demand.WantedAction;
import closehand.plan.problem.Load;
import closehand.plan.problem.Placement;
import closehand.plan.problem.PlacementRules;
import closehand.plan.problem.PlanPricer;
import closehand.plan.problem.PlanProblem;
import closehand.plan.problem.Pricing;
import closehand.plan.solve.PlanOutcome;
import closehand.plan.supply.BodyPart;
import closehand.plan.supply.Factors;
import closehand.plan.supply.SuppliedInput;
import closehand.plan.supply.Supply;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;

/** Tells what the search found in the terms of the game and the body. */
final class PlanWords {
  private static final long NEAR_PER_TEN_THOUSAND = 50;

  private final Bank bank;
  private final PlanFigures figures;
  private final Supply supply;
  private final Demand demand;
  private final PlanProblem problem;
  private final PlanOutcome outcome;
  private final Pricing pricing;
  private final PlacementRules rules;
  private final Efforts efforts;

  PlanWords(
      Bank bank,
      PlanFigures figures,
      Supply supply,
      Demand demand,
      PlanProblem problem,
      PlanOutcome outcome) {
    this.bank = bank;
    this.figures = figures;
    this.supply = supply;
    this.demand = demand;
    this.problem = problem;
    this.outcome = outcome;
    PlanPricer pricer = new PlanPricer(problem);
    this.pricing = pricer.price(outcome.plan());
    this.rules = pricer.rules();
    this.efforts = new Efforts(figures, supply);
  }

  /**
   * The plan.
   *
   * @param proved whether every form of the demand was searched to its end
   */
  Planned planned(boolean proved) {
    RunnersUp runnersUp = new RunnersUp(problem, supply, outcome.plan());
    List<Assignment> assignments = assignments(runnersUp::of);
    ControlPlan plan =
        new ControlPlan(
            demand.game(),
            demand.genre(),
            demand.title(),
            approaches(assignments),
            outcome.best(),
            outcome.bound(),
            sureness(proved),
            assignments,
            leftOut(),
            shared(assignments),
            loads(),
            settings(assignments),
            waitsFor(),
            List.of());
    return new Planned(plan, supply, demand, problem, outcome);
  }

  /** The places alone, without what explains them: enough to weigh one plan against another. */
  Planned places() {
    ControlPlan plan =
        new ControlPlan(
            demand.game(),
            demand.genre(),
            demand.title(),
            List.of(),
            outcome.best(),
            outcome.bound(),
            Sureness.OPEN,
            assignments(p -> List.of()),
            List.of(),
            List.of(),
            List.of(),
            List.of(),
            List.of(),
            List.of());
    return new Planned(plan, supply, demand, problem, outcome);
  }

  private List<Assignment> assignments(Function<Placement, List<RunnerUp>> runnersUp) {
    return outcome.plan().list().stream()
        .map(p -> assignment(p, runnersUp.apply(p)))
        .sorted(
            Comparator.comparingInt(Assignment::importance)
                .reversed()
                .thenComparing(Assignment::id))
        .toList();
  }

  private Sureness sureness(boolean proved) {
    if (proved && outcome.status() == PlanOutcome.Status.PROVED) {
      return Sureness.PROVED;
    }
    return outcome.gapPerTenThousand() <= NEAR_PER_TEN_THOUSAND ? Sureness.NEAR : Sureness.OPEN;
  }

  private List<String> waitsFor() {
    Set<String> waits = new LinkedHashSet<>(supply.waitsFor());
    waits.addAll(demand.waitsFor());
    return List.copyOf(waits);
  }

  private List<String> approaches(List<Assignment> assignments) {
    Set<String> used = new LinkedHashSet<>();
    assignments.forEach(a -> used.add(a.approach()));
    for (String layer : pricing.layers()) {
      supply.layers().stream()
          .filter(l -> l.id().equals(layer))
          .flatMap(l -> supply.input(l.button()).stream())
          .forEach(i -> used.add(i.approach()));
    }
    return bank.approaches().stream().map(Approach::id).filter(used::contains).toList();
  }

  private Assignment assignment(Placement placement, List<RunnerUp> runnersUp) {
    WantedAction action = demand.action(placement.action()).orElseThrow();
    SuppliedInput input = supply.input(placement.slot().input()).orElseThrow();
    Factors.Factor factor = efforts.factor(action, input);
    boolean toggled = placement.mode() == closehand.plan.problem.Mode.TOGGLED;
    Mode mode =
        toggled
            ? Mode.TOGGLE
            : action.style().isAxis() ? Mode.AXIS : action.style().isHeld() ? Mode.HOLD : Mode.TAP;
    return new Assignment(
        action.id(),
        action.of(),
        action.name(),
        input.approach(),
        input.input(),
        input.name(),
        input.kind(),
        supply.device(input.device()).map(d -> d.name()).orElse(input.device()),
        input.usage(),
        input.effector(),
        placement.slot().layer().flatMap(this::held),
        mode,
        action.perMinute(),
        action.holdSeconds(),
        action.importance(),
        action.urgency(),
        rules.cost(placement).total(),
        factor.value(),
        factor.rules(),
        runnersUp);
  }

  private Optional<String> held(String layer) {
    return supply.layers().stream()
        .filter(l -> l.id().equals(layer))
        .flatMap(l -> supply.input(l.button()).stream())
        .map(SuppliedInput::name)
        .findFirst();
  }

  private List<LeftOut> leftOut() {
    List<LeftOut> left = new ArrayList<>();
    for (WantedAction action : demand.actions()) {
      if (outcome.plan().of(action.id()).isEmpty()) {
        left.add(
            new LeftOut(
                action.id(),
                action.of(),
                action.name(),
                action.importance(),
                new WhyNot(rules).of(action.id()),
                untried(action)));
      }
    }
    for (Settled settled : demand.settled()) {
      if (settled.how() == Settled.How.NO_WAY || settled.how() == Settled.How.DROPPED) {
        left.add(
            new LeftOut(
                settled.action(), settled.action(), settled.name(), 0, settled.words(), List.of()));
      } else if (settled.how() == Settled.How.TEXT && supply.textBy().isEmpty()) {
        left.add(
            new LeftOut(
                settled.action(),
                settled.action(),
                settled.name(),
                0,
                "it needs typing, spoken text or keys on the screen",
                List.of()));
      }
    }
    left.sort(Comparator.comparingInt(LeftOut::importance).reversed());
    return left;
  }

  /** Settings that games of this kind often have for an action, which nobody has ticked yet. */
  private List<String> untried(WantedAction action) {
    return bank.game(demand.genre()).stream()
        .flatMap(g -> g.actions().stream())
        .filter(a -> a.id().equals(action.of()))
        .flatMap(a -> a.options().stream())
        .filter(o -> figures.demand().settings().stream().anyMatch(s -> s.fits(o)))
        .map(o -> "the setting \"" + o + "\", if the game has it")
        .toList();
  }

  private List<Shared> shared(List<Assignment> assignments) {
    List<Shared> shared = new ArrayList<>();
    for (Settled settled : demand.settled()) {
      switch (settled.how()) {
        case SETTING ->
            shared.add(
                new Shared(
                    settled.action(), settled.name(), "the setting: " + settled.words(), ""));
        case ONCE, WITH ->
            shared.add(
                new Shared(settled.action(), settled.name(), settled.words(), settled.with()));
        case TEXT ->
            supply.textBy().stream()
                .findFirst()
                .flatMap(bank::approach)
                .ifPresent(
                    a ->
                        shared.add(
                            new Shared(
                                settled.action(),
                                settled.name(),
                                "text by: " + a.words().brief(),
                                "")));
        default -> {
          // Dropped and impossible ones are on the list of what is left out.
        }
      }
    }
    return shared;
  }

  private List<EffectorLoad> loads() {
    List<EffectorLoad> loads = new ArrayList<>();
    for (Map.Entry<String, Load> entry : new java.util.TreeMap<>(pricing.loads()).entrySet()) {
      BodyPart part = supply.body().get(entry.getKey());
      Load load = entry.getValue();
      if (part == null || (load.pressesTenths() == 0 && load.heldMillis() == 0)) {
        continue;
      }
      boolean red =
          load.pressesTenths() > part.mostPressesTenths()
              || load.heldMillis() > part.mostHeldMillis();
      boolean amber =
          load.pressesTenths() > part.greenPressesTenths()
              || load.heldMillis() > part.greenHeldMillis();
      loads.add(
          new EffectorLoad(
              entry.getKey(),
              load.pressesTenths() / 10.0,
              load.heldMillis() / 60_000.0,
              red ? Light.RED : amber ? Light.AMBER : Light.GREEN));
    }
    return loads;
  }

  /** What to set in the game: what the plan relies on. */
  private List<String> settings(List<Assignment> assignments) {
    List<String> settings = new ArrayList<>();
    for (Settled settled : demand.settled()) {
      if (settled.how() == Settled.How.SETTING) {
        settings.add(settled.name() + ": turn on \"" + settled.words() + "\"");
      }
    }
    for (Assignment assignment : assignments) {
      if (assignment.mode() == Mode.TOGGLE) {
        settings.add(assignment.name() + ": press on, press off instead of a hold");
      }
    }
    return settings;
  }
}
