package closehand.report;

import closehand.plan.ControlPlan;
import closehand.plan.ControlPlan.Assignment;
import closehand.plan.ControlPlan.Mode;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;

/**
 * Which key or button each input of a plan should send. What has a usage of its own keeps it; a
 * switch or a phrase gets a function key that nothing else in the plan sends.
 */
final class KeyChoice {
  private static final Set<String> NEEDS_A_KEY = Set.of("switch", "phrase", "sound", "panelButton");

  /** What stands where the game's own menu has to be told of this very input. */
  static final String IN_THE_GAME = "in the game";

  private final Map<String, String> chosen = new HashMap<>();
  private final boolean keyboard;

  /**
   * The keys of one plan.
   *
   * @param keyboard whether the game takes keys; otherwise any free controller button is named
   */
  KeyChoice(ControlPlan plan, boolean keyboard) {
    this.keyboard = keyboard;
    Set<String> taken = new HashSet<>();
    plan.assignments().forEach(a -> taken.add(a.usage()));
    Deque<String> spare = new ArrayDeque<>(UsageNames.spareKeys());
    spare.removeAll(taken);
    for (Assignment one : plan.assignments()) {
      boolean direction = one.input().contains(".");
      if ((NEEDS_A_KEY.contains(one.inputKind()) || direction)
          && one.usage().isEmpty()
          && one.mode() != Mode.AXIS
          && !spare.isEmpty()) {
        chosen.put(one.id(), spare.removeFirst());
      }
    }
  }

  /**
   * The name and the usage in brackets; "as it is" for what moves; "in the game" for an input
   * without a usage of its own, which the game's menu has to be told.
   */
  String of(Assignment assignment) {
    String usage =
        assignment.usage().isEmpty()
            ? chosen.getOrDefault(assignment.id(), "")
            : assignment.usage();
    boolean spare = assignment.usage().isEmpty() && !usage.isEmpty();
    if (spare && !keyboard) {
      return "any free button";
    }
    if (usage.isEmpty() && NEEDS_A_KEY.contains(assignment.inputKind())) {
      return keyboard ? "any free key" : "any free button";
    }
    if (usage.isEmpty() && assignment.mode() != Mode.AXIS) {
      return IN_THE_GAME;
    }
    return usage.isEmpty() ? "as it is" : UsageNames.of(usage) + " (" + usage + ")";
  }
}
