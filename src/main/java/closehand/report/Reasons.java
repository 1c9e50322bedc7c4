package closehand.report;

import closehand.bank.Rule;
import closehand.rules.Finding;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** The reasons behind a standing, as sentences to the player. */
final class Reasons {
  private Reasons() {}

  /** The reasons that weigh most for (or against) this approach, without repeats. */
  static List<String> weightiest(List<Finding> findings, String approach, int most) {
    List<Finding> sorted = new ArrayList<>(findings);
    sorted.sort(
        Comparator.comparingInt((Finding f) -> Math.abs(points(f.rule(), approach))).reversed());
    return sentences(sorted, most);
  }

  /** The reason that weighs most, in a few words; as a list, empty where there is none. */
  static List<String> weightiestInFewWords(List<Finding> findings, String approach) {
    return findings.stream()
        .max(Comparator.comparingInt((Finding f) -> Math.abs(points(f.rule(), approach))))
        .map(f -> List.of(Phrases.sentence(f.rule().briefReason())))
        .orElse(List.of());
  }

  /** The reasons in the order of their rules, without repeats. */
  static List<String> sentences(List<Finding> findings, int most) {
    return findings.stream()
        .map(f -> Phrases.sentence(f.rule().reason()))
        .distinct()
        .limit(most)
        .toList();
  }

  /** What a rule adds to this approach when it fires. */
  static int points(Rule rule, String approach) {
    return rule.effects().support().stream()
        .filter(s -> s.approach().equals(approach))
        .mapToInt(Rule.Support::points)
        .sum();
  }
}
