package closehand.plan;

import closehand.plan.problem.Wishes;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * Wishes as they are kept with a case: by the ids they came to mean in the plans made with them.
 */
public final class KeptWishes {
  private KeptWishes() {}

  /**
   * The changes with these wishes for every game that has such an action and input.
   *
   * @param plans the plans made with the wishes, by slot from 1
   */
  public static PlanChanges with(
      PlanChanges changes, Map<Integer, Planned> plans, List<PlanAsk.Wish> wishes) {
    PlanChanges next = changes;
    for (Map.Entry<Integer, Planned> one : plans.entrySet()) {
      Planned planned = one.getValue();
      PlanChanges.OfGame game = next.of(one.getKey(), planned.plan().genre());
      for (Wishes.Pin pin : pins(planned, wishes)) {
        game = game.wishing(new PlanAsk.Wish(pin.action(), pin.slot().input()));
      }
      next = next.with(one.getKey(), game);
    }
    return next;
  }

  private static List<Wishes.Pin> pins(Planned planned, List<PlanAsk.Wish> wishes) {
    WishReading reading = new WishReading(planned.problem(), planned.supply(), planned.demand());
    List<Wishes.Pin> pins = new ArrayList<>();
    wishes.forEach(w -> reading.pin(w).ifPresent(pins::add));
    return pins;
  }
}
