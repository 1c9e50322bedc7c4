package closehand.report;

import closehand.bank.Condition;
import closehand.bank.Rule;
import closehand.rules.Advice;
import closehand.rules.Finding;
import closehand.rules.Outcome;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** The sentences that firing rules bring to a page, those about this player first. */
final class Sayings {
  private Sayings() {}

  /**
   * Sentences on this topic: first from rules about this player that bring nothing but advice, then
   * from those that raise a caution too (whose own text says much the same), then from rules that
   * always hold.
   */
  static List<String> on(Advice advice, String topic) {
    Set<String> sentences = new LinkedHashSet<>();
    for (int rank = 0; rank <= 2; rank++) {
      for (Finding finding : firing(advice)) {
        if (rank(finding.rule()) == rank) {
          add(sentences, finding.rule(), topic);
        }
      }
    }
    return List.copyOf(sentences);
  }

  /**
   * Sentences on this topic from rules about this player, the last rules of the bank first: those
   * are about how to begin.
   */
  static List<String> lastFirst(Advice advice, String topic) {
    List<Finding> findings = new ArrayList<>(firing(advice));
    java.util.Collections.reverse(findings);
    Set<String> sentences = new LinkedHashSet<>();
    for (Finding finding : findings) {
      if (!isGeneral(finding.rule())) {
        add(sentences, finding.rule(), topic);
      }
    }
    return List.copyOf(sentences);
  }

  /** The rules that fire, in rule order. */
  static List<Finding> firing(Advice advice) {
    return advice.findings().stream().filter(f -> f.outcome() == Outcome.TRUE).toList();
  }

  private static void add(Set<String> sentences, Rule rule, String topic) {
    for (Rule.Advice one : rule.effects().advice()) {
      if (one.topic().equals(topic)) {
        sentences.add(one.say());
      }
    }
  }

  private static int rank(Rule rule) {
    if (isGeneral(rule)) {
      return 2;
    }
    return rule.effects().cautions().isEmpty() ? 0 : 1;
  }

  private static boolean isGeneral(Rule rule) {
    return rule.when() instanceof Condition.Always;
  }
}
