package closehand.report.practice;

import closehand.bank.Effectors;
import closehand.measure.practice.ButtonCheck;
import closehand.measure.practice.Sheet;
import closehand.measure.practice.Signal;
import closehand.plan.Planned;
import closehand.plan.demand.WantedAction;
import closehand.plan.problem.Mode;
import closehand.plan.problem.Placement;
import closehand.plan.supply.SuppliedInput;
import closehand.plan.supply.Supply;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What of a control plan can be practised with prompts: everything that is pressed. */
public final class PracticeSheets {
  private PracticeSheets() {}

  /** The inputs of a plan that are pressed, each once, in the order of the plan. */
  public static List<SuppliedInput> inputs(Planned planned) {
    Map<String, SuppliedInput> inputs = new LinkedHashMap<>();
    for (Placement placement : pressed(planned)) {
      input(planned, placement).ifPresent(i -> inputs.putIfAbsent(i.id(), i));
    }
    return List.copyOf(inputs.values());
  }

  /** The same inputs for a button check. */
  public static List<ButtonCheck.Wanted> wanted(Planned planned) {
    return inputs(planned).stream()
        .map(
            i ->
                new ButtonCheck.Wanted(
                    i.id(), i.name(), Effectors.words(i.effector()), ExpectedSignals.of(i.usage())))
        .toList();
  }

  /** The names of actions that are moved rather than pressed, which no prompt can time. */
  public static List<String> moved(Planned planned) {
    return planned.outcome().plan().list().stream()
        .flatMap(p -> planned.demand().action(p.action()).stream())
        .filter(a -> a.style().isAxis())
        .map(WantedAction::name)
        .toList();
  }

  /**
   * The sheet of a plan.
   *
   * @param signals what each input sends, by its id; inputs that send nothing are left out
   */
  public static Sheet of(Planned planned, Map<String, Signal> signals) {
    List<Sheet.Target> targets = new ArrayList<>();
    for (SuppliedInput input : inputs(planned)) {
      Signal signal = signals.get(input.id());
      if (signal != null) {
        targets.add(target(input, signal));
      }
    }
    List<Sheet.Job> jobs = new ArrayList<>();
    for (Placement placement : pressed(planned)) {
      Optional<WantedAction> action = planned.demand().action(placement.action());
      if (action.isPresent() && signals.containsKey(placement.slot().input())) {
        jobs.add(job(planned.supply(), action.get(), placement));
      }
    }
    return new Sheet(targets, jobs, pairs(planned, jobs));
  }

  private static List<Placement> pressed(Planned planned) {
    return planned.outcome().plan().list().stream()
        .filter(
            p -> planned.demand().action(p.action()).filter(a -> !a.style().isAxis()).isPresent())
        .toList();
  }

  private static Optional<SuppliedInput> input(Planned planned, Placement placement) {
    return planned.supply().input(placement.slot().input());
  }

  private static Sheet.Target target(SuppliedInput input, Signal signal) {
    return new Sheet.Target(
        input.id(),
        input.name(),
        Effectors.words(input.effector()),
        new Sheet.Place(input.device(), input.column(), input.row()),
        signal);
  }

  private static Sheet.Job job(Supply supply, WantedAction action, Placement placement) {
    boolean toggled = placement.mode() == Mode.TOGGLED;
    return new Sheet.Job(
        action.id(),
        action.name(),
        placement.slot().input(),
        action.perMinute() * (toggled ? 2 : 1),
        action.urgency(),
        placement.slot().layer().flatMap(l -> held(supply, l)));
  }

  private static Optional<String> held(Supply supply, String layer) {
    return supply.layers().stream()
        .filter(l -> l.id().equals(layer))
        .flatMap(l -> supply.input(l.button()).stream())
        .map(SuppliedInput::name)
        .findFirst();
  }

  private static List<Sheet.Pair> pairs(Planned planned, List<Sheet.Job> jobs) {
    List<String> known = jobs.stream().map(Sheet.Job::action).toList();
    List<Sheet.Pair> pairs = new ArrayList<>();
    for (String one : known) {
      planned
          .demand()
          .action(one)
          .ifPresent(
              a ->
                  a.pressedWith().stream()
                      .filter(o -> one.compareTo(o) < 0 && known.contains(o))
                      .forEach(o -> pairs.add(new Sheet.Pair(one, o))));
    }
    return pairs;
  }
}
