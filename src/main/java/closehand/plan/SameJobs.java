package closehand.plan;

import closehand.bank.PlanFigures;
import closehand.plan.demand.Demand;
import closehand.plan.demand.WantedAction;
import closehand.plan.problem.Placement;
import closehand.plan.problem.PlanProblem;
import closehand.plan.problem.Slot;
import closehand.plan.problem.Wishes;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** The same job sits on the same input in every game, where that costs little. */
final class SameJobs {
  private SameJobs() {}

  /** The wishes with a habit for every such job. */
  static Wishes habits(
      PlanFigures figures,
      Demand demand,
      PlanProblem problem,
      Wishes wishes,
      List<Planned> before) {
    Set<String> inputs = new HashSet<>();
    problem.equipment().inputs().forEach(i -> inputs.add(i.id()));
    List<Wishes.Habit> habits = new ArrayList<>();
    for (WantedAction action : demand.actions()) {
      placed(figures, action, before)
          .filter(s -> s.layer().isEmpty() && inputs.contains(s.input()))
          .ifPresent(
              s -> habits.add(new Wishes.Habit(action.id(), s, figures.prices().habitPoints())));
    }
    return new Wishes(wishes.pins(), wishes.bans(), wishes.mustPlace(), habits);
  }

  private static Optional<Slot> placed(
      PlanFigures figures, WantedAction action, List<Planned> before) {
    Optional<String> job = figures.demand().job(action.of());
    if (job.isEmpty()) {
      return Optional.empty();
    }
    String part = action.id().substring(action.of().length());
    for (Planned planned : before) {
      for (Placement placement : planned.outcome().plan().list()) {
        Optional<WantedAction> other = planned.demand().action(placement.action());
        boolean same =
            other
                .filter(o -> figures.demand().job(o.of()).equals(job))
                .filter(o -> o.id().substring(o.of().length()).equals(part))
                .isPresent();
        if (same) {
          return Optional.of(placement.slot());
        }
      }
    }
    return Optional.empty();
  }
}
