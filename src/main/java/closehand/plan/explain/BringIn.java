package closehand.plan.explain;

import closehand.plan.problem.Action;
import closehand.plan.problem.Body;
import closehand.plan.problem.CoPress;
import closehand.plan.problem.Effector;
import closehand.plan.problem.Load;
import closehand.plan.problem.PlanPricer;
import closehand.plan.problem.PlanProblem;
import closehand.plan.problem.Play;
import closehand.plan.problem.Style;
import closehand.plan.solve.Budget;
import closehand.plan.solve.ControlPlanSolver;
import closehand.plan.solve.PlanOutcome;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Which single change would bring a left-out action into the best plan: each candidate is tried by
 * solving the changed problem, started from the plan that is there.
 */
public final class BringIn {
  private final PlanProblem problem;
  private final PlanOutcome outcome;
  private final Budget each;
  private final Map<Change, PlanOutcome> tried = new HashMap<>();

  /** Changes to the plan of this outcome, looking this hard for each. */
  public BringIn(PlanProblem problem, PlanOutcome outcome, Budget each) {
    this.problem = problem;
    this.outcome = outcome;
    this.each = each;
  }

  /**
   * The changes that work, the cheapest resulting plan first.
   *
   * @param action the id of an action that is left out
   * @param most stop after so many were found
   */
  public List<Helps> changes(String action, int most) {
    List<Helps> found = new ArrayList<>();
    for (Change change : candidates(action)) {
      if (found.size() >= most || each.stop().getAsBoolean()) {
        break;
      }
      PlanOutcome changed =
          change instanceof Change.TwiceTheWarning
              ? solved(action, change)
              : tried.computeIfAbsent(change, c -> solved(action, c));
      if (changed.plan().of(action).isPresent()) {
        found.add(new Helps(change, changed));
      }
    }
    found.sort(Comparator.comparingLong(h -> h.outcome().best()));
    return List.copyOf(found);
  }

  /** Most changes are the same whichever action they are tried for, and solved once for all. */
  private PlanOutcome solved(String action, Change change) {
    return ControlPlanSolver.solve(apply(action, change), each, Optional.of(outcome.plan()));
  }

  private List<Change> candidates(String action) {
    List<Change> all = new ArrayList<>();
    Action wanted = action(action);
    if (wanted.style() == Style.HOLD && !wanted.toggleOffered()) {
      all.add(new Change.Toggle(action));
    }
    for (Action other : problem.play().actions()) {
      boolean placed = outcome.plan().of(other.id()).isPresent();
      if (placed && other.style() == Style.HOLD && !other.toggleOffered()) {
        all.add(new Change.Toggle(other.id()));
      }
    }
    for (CoPress pair : problem.play().coPresses()) {
      if (pair.first().equals(action) || pair.second().equals(action)) {
        all.add(new Change.NotTogether(pair.first(), pair.second()));
      }
    }
    all.add(new Change.OnePartMore());
    if (wanted.warningMillis() != Action.NO_HURRY) {
      all.add(new Change.TwiceTheWarning());
    }
    busiest().forEach(e -> all.add(new Change.QuarterMore(e)));
    problem.play().actions().stream()
        .filter(a -> a.importance() <= wanted.importance() && !a.id().equals(action))
        .filter(a -> outcome.plan().of(a.id()).isPresent())
        .sorted(Comparator.comparingInt(Action::importance))
        .forEach(a -> all.add(new Change.Without(a.id())));
    return all;
  }

  private Action action(String id) {
    return problem.play().actions().stream()
        .filter(a -> a.id().equals(id))
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException("unknown action"));
  }

  /** Effectors at more than half of a limit; the others are not what is missing. */
  private List<String> busiest() {
    Map<String, Load> loads = new PlanPricer(problem).price(outcome.plan()).loads();
    return problem.body().effectors().stream()
        .filter(
            e -> {
              Load load = loads.getOrDefault(e.id(), Load.NONE);
              return 2 * load.pressesTenths() > e.limit().pressesTenths()
                  || 2 * load.heldMillis() > e.limit().heldMillis();
            })
        .map(Effector::id)
        .toList();
  }

  /** The problem with one change. */
  PlanProblem apply(String action, Change change) {
    Play play = problem.play();
    if (change instanceof Change.OnePartMore) {
      int parts = problem.equipment().mostParts() + 1;
      return problem.with(problem.equipment().withMostParts(parts));
    } else if (change instanceof Change.Toggle toggle) {
      return problem.with(replaced(play, toggle.action(), true, 1));
    } else if (change instanceof Change.TwiceTheWarning) {
      return problem.with(replaced(play, action, false, 2));
    } else if (change instanceof Change.NotTogether pair) {
      CoPress dropped = new CoPress(pair.first(), pair.second());
      List<CoPress> fewer = new ArrayList<>(play.coPresses());
      fewer.removeIf(dropped::equals);
      return problem.with(new Play(play.actions(), fewer, play.conventions()));
    } else if (change instanceof Change.Without without) {
      return ProblemEdits.without(problem, without.action());
    }
    String effector = ((Change.QuarterMore) change).effector();
    return problem.with(
        new Body(
            problem.body().effectors().stream()
                .map(e -> e.id().equals(effector) ? quarterMore(e) : e)
                .toList(),
            problem.body().coupled()));
  }

  private static Play replaced(Play play, String id, boolean toggle, int times) {
    List<Action> changed =
        play.actions().stream()
            .map(
                a ->
                    a.id().equals(id)
                        ? new Action(
                            id,
                            a.name(),
                            a.style(),
                            a.perMinuteTenths(),
                            a.holdMillis(),
                            (int) Math.min(Action.NO_HURRY, (long) times * a.warningMillis()),
                            a.importance(),
                            toggle || a.toggleOffered())
                        : a)
            .toList();
    return new Play(changed, play.coPresses(), play.conventions());
  }

  private static Effector quarterMore(Effector e) {
    Effector.LoadLimit more =
        new Effector.LoadLimit(more(e.limit().pressesTenths()), more(e.limit().heldMillis()));
    return new Effector(e.id(), e.name(), e.usable(), more, e.amber());
  }

  private static int more(int limit) {
    return (int) Math.min(Integer.MAX_VALUE, limit + limit / 4L);
  }
}
