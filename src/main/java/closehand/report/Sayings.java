package closehand.report;

import closehand.bank.CautionClass;
import closehand.bank.Condition;
import closehand.bank.Rule;
import closehand.bank.TaskKind;
import closehand.rules.Advice;
import closehand.rules.Finding;
import closehand.rules.Outcome;
import closehand.rules.Standing;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** The sentences that firing rules bring to a page. */
final class Sayings {
  /** The theme of rules about how a plan shares out the jobs. */
  private static final String SHARING_OUT = "plan";

  private Sayings() {}

  /** The rules that fire, in rule order. */
  static List<Finding> firing(Advice advice) {
    return advice.findings().stream().filter(f -> f.outcome() == Outcome.TRUE).toList();
  }

  /** All sentences on this topic that concern something suggested, in rule order. */
  static List<String> all(Advice advice, String topic) {
    return on(topic, concerning(advice, firing(advice)));
  }

  /**
   * Sentences on this topic for whoever sets up these approaches, from rules about this player, in
   * rule order.
   */
  static List<String> setUp(Advice advice, String topic, Set<String> used) {
    List<Finding> findings = new ArrayList<>(aboutThePlayer(advice));
    // The plan has already shared the jobs out by these.
    findings.removeIf(f -> f.rule().theme().equals(SHARING_OUT));
    findings.removeIf(f -> !speaksFor(f.rule(), used) && !isCareful(f.rule()));
    return on(topic, findings);
  }

  private static boolean isCareful(Rule rule) {
    return rule.effects().cautions().stream().anyMatch(c -> c.cautionClass() != CautionClass.NOTE);
  }

  /**
   * Leaves out rules that speak for approaches none of which is suggested, unless they also raise a
   * caution: then what they say is about the player.
   */
  private static List<Finding> concerning(Advice advice, List<Finding> findings) {
    Set<String> suggested = new LinkedHashSet<>();
    for (Standing standing : advice.standings()) {
      if (standing.status().suggested()) {
        suggested.add(standing.approach().id());
      }
    }
    return findings.stream()
        .filter(f -> speaksFor(f.rule(), suggested) || !f.rule().effects().cautions().isEmpty())
        .toList();
  }

  private static boolean speaksFor(Rule rule, Set<String> suggested) {
    List<String> favoured =
        rule.effects().support().stream()
            .filter(s -> s.points() > 0)
            .map(Rule.Support::approach)
            .toList();
    return favoured.isEmpty() || favoured.stream().anyMatch(suggested::contains);
  }

  /**
   * Sentences on this topic from rules about this player: first those of rules that bring nothing
   * but advice, then those of rules that also raise a caution or rule something out (the page says
   * much the same there).
   */
  static List<String> tellingFirst(Advice advice, String topic) {
    List<Finding> sorted = aboutThePlayer(advice);
    sorted.sort(Comparator.comparing((Finding f) -> saysMore(f.rule())));
    return on(topic, concerning(advice, sorted));
  }

  /**
   * Sentences on this topic from rules about this player, the last rules of the bank first: those
   * are about how to begin.
   */
  static List<String> lastFirst(Advice advice, String topic) {
    List<Finding> findings = aboutThePlayer(advice);
    Collections.reverse(findings);
    return on(topic, concerning(advice, findings));
  }

  /**
   * Sentences on this topic that these rules bring, without repeats; what a rule says of several
   * fingers or both sides is said once.
   */
  static List<String> on(String topic, List<Finding> findings) {
    Map<String, List<String>> alike = new LinkedHashMap<>();
    for (Finding finding : findings) {
      List<Rule.Advice> advice = finding.rule().effects().advice();
      for (int i = 0; i < advice.size(); i++) {
        if (advice.get(i).topic().equals(topic)) {
          alike
              .computeIfAbsent(finding.rule().id() + " " + i, k -> new ArrayList<>())
              .add(advice.get(i).say());
        }
      }
    }
    Set<String> sentences = new LinkedHashSet<>();
    alike.values().forEach(same -> sentences.addAll(Merged.sentences(same)));
    return List.copyOf(sentences);
  }

  /** Whether a rule that raises a caution or a stop says this: the caution on the page does too. */
  static boolean saidInACaution(Advice advice, String topic, String sentence) {
    return on(topic, firing(advice).stream().filter(f -> isCareful(f.rule())).toList())
        .contains(sentence);
  }

  private static List<Finding> aboutThePlayer(Advice advice) {
    List<Finding> findings = new ArrayList<>(firing(advice));
    findings.removeIf(f -> f.rule().when() instanceof Condition.Always);
    return findings;
  }

  /** Sentences on this topic from rules that hold timed or strength tasks, in rule order. */
  static List<String> holding(Advice advice, String topic) {
    return on(
        topic,
        firing(advice).stream()
            .filter(f -> f.rule().effects().holds().contains(TaskKind.STRENGTH))
            .filter(f -> f.rule().effects().holds().contains(TaskKind.TIMED))
            .toList());
  }

  private static boolean saysMore(Rule rule) {
    return !rule.effects().cautions().isEmpty() || !rule.effects().exclude().isEmpty();
  }
}
