package closehand.plan.explain;

import closehand.plan.problem.Placement;
import closehand.plan.problem.PlanProblem;
import closehand.plan.problem.Wishes;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** Problems with one wish more. */
final class WishEdits {
  private WishEdits() {}

  /** The problem in which an action must be placed, but not on this input. */
  static PlanProblem banned(PlanProblem problem, Placement placement) {
    Wishes wishes = must(problem.wishes(), placement.action());
    List<Wishes.Ban> bans = new ArrayList<>(wishes.bans());
    bans.add(new Wishes.Ban(placement.action(), placement.slot().input()));
    return problem.with(new Wishes(wishes.pins(), bans, wishes.mustPlace(), wishes.habits()));
  }

  /** The wishes with one action more that may not be left out. */
  static Wishes must(Wishes wishes, String action) {
    Set<String> must = new HashSet<>(wishes.mustPlace());
    must.add(action);
    return new Wishes(wishes.pins(), wishes.bans(), must, wishes.habits());
  }

  /** The wishes with one pin, instead of an earlier one of the same action. */
  static Wishes pinned(Wishes wishes, Wishes.Pin pin) {
    List<Wishes.Pin> pins = new ArrayList<>(wishes.pins());
    pins.removeIf(p -> p.action().equals(pin.action()));
    pins.add(pin);
    return new Wishes(pins, wishes.bans(), wishes.mustPlace(), wishes.habits());
  }
}
