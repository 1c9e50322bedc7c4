package closehand.report;

import closehand.bank.Approach;
import closehand.bank.Bank;
import closehand.plan.ControlPlan;
import closehand.plan.ControlPlan.LeftOut;
import closehand.plan.PlanAsk;
import closehand.plan.Planned;
import closehand.plan.Planning;
import closehand.plan.explain.BringIn;
import closehand.plan.explain.Helps;
import closehand.plan.solve.Budget;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Which single change would bring each left-out action in: another control, a toggle, a pair that
 * need not go together, one action less and the like. Each is found by solving again with that one
 * thing changed.
 */
public final class BroughtIn {
  private static final int MOST = 3;
  private static final int MOST_CONTROLS = 8;

  private final Bank bank;
  private final Planned planned;
  private final BringIn changes;
  private final PlanNames names;
  private final Map<String, List<String>> controls = new LinkedHashMap<>();

  private BroughtIn(Bank bank, Planned planned, Budget each) {
    this.bank = bank;
    this.planned = planned;
    this.changes = new BringIn(planned.problem(), planned.outcome(), each);
    this.names = new PlanNames(planned);
  }

  /**
   * The plan with these changes beside every action that has no place.
   *
   * @param planning what it was made with
   * @param ask what it was made for
   * @param each how hard to look for each change
   */
  public static Planned into(
      Bank bank, Planning planning, PlanAsk ask, Planned planned, Budget each) {
    if (planned.plan().leftOut().stream().noneMatch(l -> isPlaceable(planned, l))) {
      return planned;
    }
    BroughtIn found = new BroughtIn(bank, planned, each);
    found.controls(planning, ask, each);
    List<LeftOut> told = planned.plan().leftOut().stream().map(found::told).toList();
    return planned.told(planned.plan().leavingOut(told));
  }

  private static boolean isPlaceable(Planned planned, LeftOut left) {
    return planned.demand().action(left.id()).isPresent();
  }

  /** What each control that is not suggested would bring in; one plan answers for all actions. */
  private void controls(Planning planning, PlanAsk ask, Budget each) {
    int slot = planned.plan().game() + 1;
    List<String> suggested = ask.approaches().orElseGet(() -> planning.suggested(slot));
    planning.notSuggested(slot).stream()
        .filter(a -> !suggested.contains(a))
        .takeWhile(a -> !each.stop().getAsBoolean())
        .limit(MOST_CONTROLS)
        .forEach(
            a -> {
              List<String> more = new ArrayList<>(suggested);
              more.add(a);
              control(a, planning.plan(slot, ask.only(more), each).plan());
            });
  }

  private void control(String approach, ControlPlan with) {
    for (LeftOut left : planned.plan().leftOut()) {
      boolean there = with.leftOut().stream().noneMatch(l -> l.action().equals(left.action()));
      boolean uses = with.approaches().contains(approach);
      if (there && uses && isPlaceable(planned, left)) {
        controls.computeIfAbsent(left.id(), i -> new ArrayList<>()).add(approach);
      }
    }
  }

  private LeftOut told(LeftOut left) {
    if (!isPlaceable(planned, left)) {
      return left;
    }
    List<String> ways = new ArrayList<>();
    for (Helps helps : changes.changes(left.id(), MOST)) {
      ways.add(names.bringingIn(helps.change()));
    }
    controls.getOrDefault(left.id(), List.of()).stream()
        .limit(1)
        .flatMap(a -> bank.approach(a).stream())
        .forEach(a -> ways.add(another(a)));
    ways.addAll(left.bringInBy());
    return new LeftOut(
        left.id(), left.action(), left.name(), left.importance(), left.because(), ways);
  }

  private static String another(Approach approach) {
    String name = Phrases.lower(approach.words().brief());
    return approach.clinicianFirst()
        ? "another control, not suggested so far and only with a clinician's yes: " + name
        : "another control, not suggested so far: " + name;
  }
}
