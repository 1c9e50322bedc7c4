package closehand.bank;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/**
 * Checks that a rule has an example of every outcome and that its examples name real questions.
 * Whether an example comes out as it says is for the rules package to find.
 */
final class RuleExamples {
  private RuleExamples() {}

  /**
   * Checks the examples of one rule.
   *
   * @param doubt what could not be read
   */
  static void check(Rule rule, FactKinds kinds, Doubt doubt, List<Problem> problems) {
    if (!doubt.about(rule.where())) {
      outcomes(rule, problems);
    }
    for (Rule.Example example : rule.examples()) {
      if (!doubt.about(example.where())) {
        waits(example, problems);
      }
      Where waitsFor = example.where().child("for");
      int index = 0;
      for (String fact : example.waitsFor()) {
        name(fact, waitsFor.child(index++), kinds, problems);
      }
      example.given().values().forEach((fact, value) -> name(fact, value.where(), kinds, problems));
    }
  }

  private static void outcomes(Rule rule, List<Problem> problems) {
    boolean always = rule.when() instanceof Condition.Always && rule.unless().isEmpty();
    Set<Rule.Expect> wanted =
        new TreeSet<>(always ? Set.of(Rule.Expect.FIRES) : Set.of(Rule.Expect.values()));
    rule.examples().forEach(e -> wanted.remove(e.expect()));
    if (ConditionCheck.asksHow(rule.when())) {
      wanted.remove(Rule.Expect.WAITS);
    }
    if (!wanted.isEmpty()) {
      problems.add(
          Problem.error(
              rule.where().child("examples"),
              "missing-example",
              "The rule has no example that " + words(wanted) + ".",
              "Add one."));
    }
  }

  private static String words(Set<Rule.Expect> wanted) {
    return String.join(
        " or ",
        wanted.stream()
            .map(
                e ->
                    switch (e) {
                      case FIRES -> "fires";
                      case NOT -> "does not fire";
                      case WAITS -> "waits";
                    })
            .toList());
  }

  private static void waits(Rule.Example example, List<Problem> problems) {
    boolean waits = example.expect() == Rule.Expect.WAITS;
    if (waits == example.waitsFor().isEmpty()) {
      problems.add(
          Problem.error(
              example.where(),
              "wrong-example",
              waits
                  ? "This example waits, but does not say for which questions."
                  : "This example does not wait, but says for which questions.",
              waits ? "Add \"for\"." : "Remove \"for\"."));
    }
  }

  private static void name(String fact, Where where, FactKinds kinds, List<Problem> problems) {
    boolean asked =
        (kinds.asked().contains(fact) && !fact.startsWith(FactKinds.GAME))
            || fact.equals(FactKinds.CLEARED);
    if (!asked && kinds.complete()) {
      problems.add(
          Problem.error(
              where,
              "unknown-fact",
              "\"" + fact + "\" is not asked in this bank.",
              Hint.didYouMean(fact, kinds.asked())));
    }
  }
}
