package closehand.report;

import closehand.bank.Bank;
import closehand.plan.ControlPlan;
import closehand.plan.ControlPlan.Assignment;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The actions to begin with: what matters most, the busiest first, and pause always among them, so
 * that nobody has to play on. Three to six to begin with are common practice, no source.
 */
final class FirstActions {
  private static final String PAUSE = "pause";

  private FirstActions() {}

  /**
   * Names of the actions to begin with.
   *
   * @param most at most so many, 1 or more
   */
  static List<String> of(ControlPlan plan, Bank bank, int most) {
    Map<String, Double> often = new LinkedHashMap<>();
    Map<String, Integer> matters = new LinkedHashMap<>();
    Map<String, String> names = new LinkedHashMap<>();
    for (Assignment one : plan.assignments()) {
      often.merge(one.action(), one.perMinute(), Double::sum);
      matters.merge(one.action(), one.importance(), Math::max);
      names.putIfAbsent(one.action(), name(one));
    }
    List<String> sorted = new ArrayList<>(names.keySet());
    sorted.sort(
        Comparator.<String>comparingInt(a -> -matters.getOrDefault(a, 0))
            .thenComparingDouble(a -> -often.getOrDefault(a, 0.0)));
    List<String> first = new ArrayList<>(sorted.subList(0, Math.min(most, sorted.size())));
    Optional<String> pause = sorted.stream().filter(a -> isPause(bank, a)).findFirst();
    if (pause.isPresent() && !first.contains(pause.get())) {
      first.set(first.size() - 1, pause.get());
    }
    return first.stream().map(a -> names.getOrDefault(a, a)).toList();
  }

  private static boolean isPause(Bank bank, String action) {
    return bank.planFigures()
        .flatMap(f -> f.demand().job(action))
        .filter(PAUSE::equals)
        .isPresent();
  }

  /** The action's name without the direction of one of its parts. */
  private static String name(Assignment one) {
    String name = one.name();
    boolean part = !one.id().equals(one.action()) && name.contains(": ");
    return part ? name.substring(0, name.lastIndexOf(": ")) : name;
  }
}
