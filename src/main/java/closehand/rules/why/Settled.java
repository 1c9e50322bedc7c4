package closehand.rules.why;

import closehand.bank.Question;
import closehand.interview.Answers;
import closehand.rules.Finding;
import closehand.rules.RuleBook;
import closehand.rules.Standing;
import closehand.rules.Verdict;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * The few answers that alone decide a firm suggestion: with these and no others it leads as firmly,
 * and without any one of them it does not. There may be other such sets; this one keeps the answers
 * behind the reasons for the suggestion longest.
 *
 * @param leader the id of the suggestion
 * @param telling the deciding answers that are no warning signs, in the order of the questionnaire
 * @param warningSigns the deciding answers to questions that may stop everything, in that order
 */
public record Settled(String leader, List<String> telling, List<String> warningSigns) {
  private static final int GATE = 3;

  public Settled {
    telling = List.copyOf(telling);
    warningSigns = List.copyOf(warningSigns);
  }

  /** The deciding answers; empty where no suggestion leads firmly. */
  public static Optional<Settled> of(RuleBook book, Answers answers) {
    Verdict now = book.verdict(answers);
    if (!now.firm() || now.leader().isEmpty()) {
      return Optional.empty();
    }
    Answers left = answers;
    for (String fact : dropping(book, answers, now.leader().get())) {
      Answers without = left.without(fact);
      Verdict then = book.verdict(without);
      if (then.firm() && then.sameLead(now)) {
        left = without;
      }
    }
    List<String> telling = new ArrayList<>();
    List<String> signs = new ArrayList<>();
    for (String fact : book.bank().questionnaire().fieldsByFact().keySet()) {
      if (left.byFact().containsKey(fact)) {
        (isGate(book, fact) ? signs : telling).add(fact);
      }
    }
    return Optional.of(new Settled(now.leader().get(), telling, signs));
  }

  private static boolean isGate(RuleBook book, String fact) {
    return book.bank()
        .questionnaire()
        .questionOf(fact)
        .map(Question::safetyWeight)
        .filter(w -> w >= GATE)
        .isPresent();
  }

  /** In which order to try to do without answers: the last ones first, the grounds at the end. */
  private static List<String> dropping(RuleBook book, Answers answers, String leader) {
    Set<String> grounds = new HashSet<>();
    for (Standing standing : book.advise(answers).standings()) {
      if (standing.approach().id().equals(leader)) {
        for (Finding finding : standing.inFavour()) {
          grounds.addAll(finding.supportedBy());
        }
      }
    }
    List<String> known = new ArrayList<>(book.bank().questionnaire().fieldsByFact().keySet());
    known.removeIf(f -> !answers.byFact().containsKey(f));
    Set<String> order = new LinkedHashSet<>();
    for (int i = known.size() - 1; i >= 0; i--) {
      if (!grounds.contains(known.get(i))) {
        order.add(known.get(i));
      }
    }
    for (int i = known.size() - 1; i >= 0; i--) {
      order.add(known.get(i));
    }
    return List.copyOf(order);
  }
}
