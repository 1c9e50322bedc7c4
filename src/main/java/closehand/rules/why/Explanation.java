package closehand.rules.why;

import closehand.bank.Rule;
import closehand.interview.Answers;
import closehand.rules.Finding;
import closehand.rules.RuleBook;
import closehand.rules.Standing;
import closehand.rules.Workings;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Why something stands as it does: every rule about it, with what came of the rule.
 *
 * @param subject what was asked about
 * @param standing how the approach stands, if it is one
 * @param grounds every rule about it, in rule order
 * @param withheld whether suggestions wait for a health check
 * @param lead what comes first now, and how surely
 */
public record Explanation(
    Subject subject,
    Optional<Standing> standing,
    List<Ground> grounds,
    boolean withheld,
    Lead lead) {
  public Explanation {
    grounds = List.copyOf(grounds);
  }

  /** Explains a subject for one set of answers. */
  public static Explanation of(RuleBook book, Answers answers, Subject subject) {
    Workings workings = Workings.of(book, answers);
    List<Ground> grounds = new ArrayList<>();
    List<Rule> rules = book.bank().rules();
    for (int i = 0; i < rules.size(); i++) {
      if (subject.concerns(rules.get(i))) {
        Finding finding = workings.advice().findings().get(i);
        Part when = Part.of(workings.when(i), workings);
        grounds.add(new Ground(finding, when, workings.unless(i).map(u -> Part.of(u, workings))));
      }
    }
    Optional<Standing> standing =
        workings.advice().standings().stream()
            .filter(s -> s.approach().id().equals(subject.id()))
            .findFirst();
    return new Explanation(
        subject,
        standing,
        grounds,
        workings.advice().withheld(),
        Lead.of(book.verdict(answers), workings));
  }

  /** The rules in this state, in rule order. */
  public List<Ground> in(Ground.State state) {
    return grounds.stream().filter(g -> g.state() == state).toList();
  }
}
