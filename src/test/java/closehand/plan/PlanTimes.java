package closehand.plan;

import closehand.bank.GameProfile;
import closehand.plan.solve.Budget;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/**
 * Measures, no test: every core game profile with what every gold case can work, each plan stopped
 * after one second; twice, so that the second round is warm.
 */
final class PlanTimes {
  private static final long SECOND = 1_000_000_000L;
  private static final Budget UNLIMITED = Budget.ORDINARY.withNodes(1_000_000);

  private PlanTimes() {}

  /** Prints how many plans were proved, how near the others came, and how long they took. */
  public static void main(String[] arguments) {
    for (int round = 1; round <= 2; round++) {
      List<Long> times = new ArrayList<>();
      Map<ControlPlan.Sureness, Integer> sure = new EnumMap<>(ControlPlan.Sureness.class);
      for (String id : Player.ids()) {
        for (GameProfile game : Player.bank().games()) {
          Planning planning = Player.gold(id).maybePlanning(Map.of(1, game)).orElseThrow();
          long start = System.nanoTime();
          Budget budget = UNLIMITED.stoppedBy(() -> System.nanoTime() - start > SECOND);
          sure.merge(planning.plan(1, PlanAsk.USUAL, budget).plan().sureness(), 1, Integer::sum);
          times.add(System.nanoTime() - start);
        }
      }
      times.sort(Long::compare);
      System.out.printf(
          Locale.ROOT,
          "round %d: %s, median %.2f s, nine of ten %.2f s, longest %.2f s%n",
          round,
          sure,
          seconds(times, 0.5),
          seconds(times, 0.9),
          seconds(times, 1));
    }
  }

  private static double seconds(List<Long> times, double share) {
    int index = (int) Math.min(times.size() - 1, Math.floor(share * times.size()));
    return times.get(index) / (double) SECOND;
  }
}
