package closehand.plan;

import closehand.plan.problem.PlacementRules;
import closehand.plan.problem.Refusal;
import java.util.Comparator;
import java.util.Map;

/** Why an action has no place, in a few words. */
final class WhyNot {
  private final PlacementRules rules;

  WhyNot(PlacementRules rules) {
    this.rules = rules;
  }

  String of(String action) {
    if (!rules.possible(action).isEmpty()) {
      return "every input that could serve is used by something that matters more, or would ask"
          + " too much of one part of you";
    }
    return rules.refused(action).entrySet().stream()
        .filter(e -> e.getKey() != Refusal.INPUT_CANNOT && e.getKey() != Refusal.NOT_COVERED)
        .max(
            Map.Entry.<Refusal, Integer>comparingByValue()
                .thenComparing(Map.Entry.comparingByKey(Comparator.reverseOrder())))
        .map(e -> words(e.getKey()))
        .orElse("no input within your reach can do it");
  }

  private static String words(Refusal refusal) {
    return switch (refusal) {
      case TOO_SLOW -> "the inputs that are left answer too slowly for it";
      case LOAD_TOO_HIGH -> "it alone would ask too much of one part of you";
      case TOGGLE_NOT_OFFERED, TOO_LONG_ON_LAYER, BANNED ->
          "it is held longer than is easy for you, and the game may not switch it on and off";
      case EFFECTOR_NOT_USABLE -> "the part of you that could do it rests";
      default -> "no input within your reach can do it";
    };
  }
}
