package closehand.plan.explain;

import closehand.plan.problem.Mode;
import closehand.plan.problem.Placement;
import closehand.plan.problem.Placements;
import closehand.plan.problem.PlanPricer;
import closehand.plan.problem.PlanProblem;
import closehand.plan.problem.Pricing;
import closehand.plan.problem.Slot;
import closehand.plan.problem.Wishes;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A plan with one action moved by hand, priced at once; nothing is solved.
 *
 * @param plan the plan then
 * @param pricing what it costs and what it breaks
 * @param extra points a minute more than before; below 0 where it saves
 * @param displaced the action that was there before: it takes the place the moved one had where it
 *     can, and is left out where it cannot
 */
public record HandChange(Placements plan, Pricing pricing, long extra, Optional<String> displaced) {

  /** Moves an action, or places one that was left out. */
  public static HandChange move(
      PlanProblem problem, Placements before, String action, Slot slot, Mode mode) {
    PlanPricer pricer = new PlanPricer(problem);
    Optional<Placement> from = before.of(action);
    Optional<Placement> there =
        before.list().stream()
            .filter(p -> p.slot().equals(slot) && !p.action().equals(action))
            .findFirst();
    List<Placement> after = new ArrayList<>(before.list());
    from.ifPresent(after::remove);
    there.ifPresent(after::remove);
    after.add(new Placement(action, slot, mode));
    from.flatMap(f -> there.map(t -> new Placement(t.action(), f.slot(), t.mode())))
        .filter(swapped -> pricer.rules().refusal(swapped).isEmpty())
        .ifPresent(after::add);
    return of(pricer, before, after, there.map(Placement::action));
  }

  /** Takes an action out of the plan. */
  public static HandChange leaveOut(PlanProblem problem, Placements before, String action) {
    List<Placement> after = before.list().stream().filter(p -> !p.action().equals(action)).toList();
    return of(new PlanPricer(problem), before, after, Optional.empty());
  }

  private static HandChange of(
      PlanPricer pricer, Placements before, List<Placement> after, Optional<String> displaced) {
    Placements plan = new Placements(after);
    Pricing pricing = pricer.price(plan);
    long extra = pricing.cost().total() - pricer.price(before).cost().total();
    return new HandChange(plan, pricing, extra, displaced);
  }

  /** The problem with the change kept as a wish, so that the rest can be arranged around it. */
  public static PlanProblem asWish(PlanProblem problem, String action, Slot slot, Mode mode) {
    Wishes.Pin pin = new Wishes.Pin(action, slot, Optional.of(mode));
    return problem.with(WishEdits.pinned(problem.wishes(), pin));
  }
}
