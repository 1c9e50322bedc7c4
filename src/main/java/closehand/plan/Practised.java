package closehand.plan;

import closehand.plan.supply.Measured;
import java.util.List;
import java.util.Map;

/**
 * What practice adds to the planning of one game.
 *
 * @param measured what was measured of single inputs, by their ids
 * @param taken changes the player took; they hold like wishes until another wish says otherwise
 */
public record Practised(Map<String, Measured> measured, List<PlanAsk.Wish> taken) {
  /** Copies both. */
  public Practised {
    measured = Map.copyOf(measured);
    taken = List.copyOf(taken);
  }

  /** Nothing practised. */
  public static final Practised NOTHING = new Practised(Map.of(), List.of());
}
