package closehand.bank;

import java.util.List;

/**
 * Checks that a stop lets go exactly when a clinician has lowered its caution, and never where that
 * caution cannot be lowered.
 */
final class StopCheck {
  private StopCheck() {}

  static void check(Rule rule, Caution caution, List<Problem> problems) {
    boolean named =
        names(rule.when(), caution.code())
            || rule.unless().map(u -> names(u, caution.code())).orElse(false);
    boolean letsGo = rule.unless().map(u -> holdsWhenLowered(u, caution.code())).orElse(false);
    String unless = "\"unless\": [\"cleared\", \"has\", \"" + caution.code() + "\"]";
    if (!caution.lowerable() && named) {
      problems.add(
          Problem.error(
              rule.where(),
              "stop-lowering",
              caution.code() + " cannot be lowered, but this rule asks whether it was.",
              "Remove that comparison."));
    } else if (caution.lowerable() && !letsGo) {
      problems.add(
          Problem.error(
              rule.where(),
              "stop-lowering",
              "A clinician may lower "
                  + caution.code()
                  + ", but this rule does not let go whenever that is done.",
              "Add " + unless + ", alone or as one part of \"any\"."));
    }
  }

  private static boolean names(Condition condition, String code) {
    return ConditionCheck.tests(condition).stream().anyMatch(t -> lowered(t, code));
  }

  private static boolean holdsWhenLowered(Condition condition, String code) {
    if (condition instanceof Condition.Any any) {
      return any.parts().stream().anyMatch(p -> holdsWhenLowered(p, code));
    }
    if (condition instanceof Condition.All all) {
      return all.parts().stream().allMatch(p -> holdsWhenLowered(p, code));
    }
    return condition instanceof Condition.Test test && lowered(test, code);
  }

  private static boolean lowered(Condition.Test test, String code) {
    return test.fact().equals(FactKinds.CLEARED)
        && test.value() instanceof Condition.Operand.Code one
        && one.value().equals(code);
  }
}
