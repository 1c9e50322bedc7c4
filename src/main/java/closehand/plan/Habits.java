package closehand.plan;

import closehand.bank.PlanFigures;
import closehand.plan.demand.Demand;
import closehand.plan.demand.WantedAction;
import closehand.plan.problem.Convention;
import closehand.plan.problem.Style;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** What is easier to remember: directions that lie like a cross, and what must lie apart. */
final class Habits {
  private static final int BUSIEST = 2;
  private static final double BUSY_PER_MINUTE = 8;

  private final PlanFigures figures;

  Habits(PlanFigures figures) {
    this.figures = figures;
  }

  List<Convention> conventions(Demand demand) {
    List<Convention> conventions = new ArrayList<>();
    for (WantedAction action : demand.actions()) {
      String of = action.of();
      if (action.id().equals(of + ".forward")) {
        add(demand, conventions, of + ".forward", of + ".back", Convention.Kind.ABOVE);
        add(demand, conventions, of + ".left", of + ".right", Convention.Kind.LEFT);
        add(demand, conventions, of + ".left", of + ".back", Convention.Kind.NEAR);
        add(demand, conventions, of + ".back", of + ".right", Convention.Kind.NEAR);
      } else if (action.id().equals(of + ".left") && demand.action(of + ".forward").isEmpty()) {
        add(demand, conventions, of + ".left", of + ".right", Convention.Kind.LEFT);
      }
    }
    apart(demand, conventions);
    return conventions;
  }

  private void add(
      Demand demand,
      List<Convention> conventions,
      String first,
      String second,
      Convention.Kind kind) {
    if (demand.action(first).isPresent() && demand.action(second).isPresent()) {
      conventions.add(new Convention(first, second, kind, figures.prices().crossPoints()));
    }
  }

  /** A slip on a busy button must not set off what cannot be undone. */
  private void apart(Demand demand, List<Convention> conventions) {
    List<WantedAction> busy =
        demand.actions().stream()
            .filter(a -> !a.style().isAxis() && a.style() != Style.REPEAT)
            .filter(a -> a.perMinute() >= BUSY_PER_MINUTE && !a.id().contains("."))
            .sorted(Comparator.comparingDouble(WantedAction::perMinute).reversed())
            .limit(BUSIEST)
            .toList();
    for (WantedAction action : demand.actions()) {
      if (figures.demand().irreversible().contains(action.of())) {
        for (WantedAction other : busy) {
          if (!other.id().equals(action.id())) {
            conventions.add(
                new Convention(
                    action.id(),
                    other.id(),
                    Convention.Kind.APART,
                    figures.prices().apartPoints()));
          }
        }
      }
    }
  }
}
