package closehand.plan.problem;

import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * A plan judged.
 *
 * @param cost what it costs
 * @param breaches the demands it does not keep; none for a plan that can be played
 * @param loads the load on each effector that does anything, by its id
 * @param devices the ids of the devices in use
 * @param layers the ids of the layers in use
 */
public record Pricing(
    PlanCost cost,
    List<Breach> breaches,
    Map<String, Load> loads,
    Set<String> devices,
    Set<String> layers) {

  /** Whether every demand is kept. */
  public boolean isAllowed() {
    return breaches.isEmpty();
  }
}
