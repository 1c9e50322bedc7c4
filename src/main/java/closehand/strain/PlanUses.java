package closehand.strain;

import closehand.plan.ControlPlan;
import closehand.plan.Planned;
import closehand.plan.demand.WantedAction;
import closehand.plan.problem.Placement;
import closehand.plan.supply.SuppliedInput;
import java.util.ArrayList;
import java.util.List;

/** The presses that a control plan asks for. */
public final class PlanUses {
  /** How long a tap lasts where nobody says: our choice. */
  static final double TAP_SECONDS = 0.2;

  /** Of a minute of quick presses, half is pressing and half letting go. */
  private static final double HALF_MINUTE = 30;

  private final Planned planned;
  private final Body body;

  private PlanUses(Planned planned, Body body) {
    this.planned = planned;
    this.body = body;
  }

  /** What each assignment asks, and what is held for a second meaning. */
  public static List<Use> of(Planned planned, Body body) {
    PlanUses uses = new PlanUses(planned, body);
    List<Use> all = new ArrayList<>();
    for (ControlPlan.Assignment assignment : planned.plan().assignments()) {
      if (assignment.perMinute() > 0) {
        all.add(uses.use(assignment));
        uses.held(assignment, all);
      }
    }
    return all;
  }

  private Use use(ControlPlan.Assignment assignment) {
    // A toggle is pressed twice where a hold is pressed once.
    boolean twice = assignment.mode() == ControlPlan.Mode.TOGGLE;
    double perMinute = assignment.perMinute() * (twice ? 2 : 1);
    Exertion exertion =
        new Exertion(
            assignment.effector(),
            body.effortFor(assignment.effector(), assignment.factor()),
            perMinute,
            seconds(assignment, perMinute));
    // Only another part of the body lightens this one.
    List<Use.Elsewhere> elsewhere =
        assignment.runnersUp().stream()
            .filter(r -> !r.effector().equals(assignment.effector()))
            .map(r -> new Use.Elsewhere(r.input(), r.extra()))
            .toList();
    return new Use(assignment.id(), assignment.name(), kind(assignment), exertion, elsewhere);
  }

  private static Use.Kind kind(ControlPlan.Assignment assignment) {
    return switch (assignment.mode()) {
      case HOLD -> Use.Kind.HOLD;
      case AXIS -> Use.Kind.MOVE;
      case TAP, TOGGLE -> Use.Kind.TAP;
    };
  }

  private double seconds(ControlPlan.Assignment assignment, double perMinute) {
    double given =
        switch (assignment.mode()) {
          case HOLD -> assignment.holdSeconds();
          case AXIS ->
              planned.demand().action(assignment.id()).map(WantedAction::moveSeconds).orElse(0.0);
          case TAP, TOGGLE -> 0;
        };
    return given > 0 ? given : Math.min(TAP_SECONDS, HALF_MINUTE / perMinute);
  }

  /** The button that is held for a second meaning, as long as the press it is held for. */
  private void held(ControlPlan.Assignment assignment, List<Use> all) {
    planned
        .outcome()
        .plan()
        .of(assignment.id())
        .map(Placement::slot)
        .flatMap(s -> s.layer())
        .flatMap(
            id ->
                planned.supply().layers().stream()
                    .filter(l -> l.id().equals(id))
                    .flatMap(l -> planned.supply().input(l.button()).stream())
                    .findFirst())
        .ifPresent(button -> all.add(layer(assignment, button)));
  }

  private Use layer(ControlPlan.Assignment assignment, SuppliedInput button) {
    double perMinute = assignment.perMinute();
    double seconds =
        Math.min(2 * seconds(assignment, perMinute) + TAP_SECONDS, Exertion.MINUTE / perMinute);
    return new Use(
        assignment.id() + ".layer",
        button.name() + ", held for " + assignment.name(),
        Use.Kind.HOLD,
        new Exertion(
            button.effector(),
            body.effortFor(button.effector(), button.ownFactor()),
            perMinute,
            seconds),
        List.of());
  }
}
