package closehand.rules.proof;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import closehand.bank.Field;
import closehand.bank.Rule;
import closehand.interview.Answer;
import closehand.interview.Answers;
import closehand.interview.Dice;
import closehand.interview.Provenance;
import closehand.rules.Finding;
import closehand.rules.Outcome;
import closehand.rules.RuleBook;
import closehand.rules.Standing;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** Puts the answers of a finding before the rules, which must say what the finding says. */
final class Replayed {
  private static final int FILLS = 20;

  private final RuleBook book;
  private final Dice dice = new Dice(5);

  Replayed(RuleBook book) {
    this.book = book;
  }

  /** Fails unless what is claimed comes of the answers, and of twenty ways to answer the rest. */
  void holds(Advisory one) {
    Answers shown = one.witness().orElseThrow();
    holds(one, shown);
    for (int i = 0; i < FILLS; i++) {
      holds(one, filled(shown));
    }
  }

  private void holds(Advisory one, Answers answers) {
    Set<String> firing = new HashSet<>();
    for (Finding finding : book.advise(answers).findings()) {
      if (finding.outcome() == Outcome.TRUE) {
        firing.add(finding.rule().key());
      }
    }
    String told = one + " of " + firing;
    switch (one.kind()) {
      case SAYS_THE_SAME, BAND_OVERLAP -> assertTrue(firing.containsAll(one.subjects()), told);
      case CONTRADICTS -> assertTrue(left(one, firing) <= 0, told);
      case POINTS_NEVER_COUNT -> {
        assertTrue(firing.contains(one.subjects().get(0)), told);
        assertTrue(isOut(one.details().get(0), answers), told);
      }
      case ALL_EXCLUDED ->
          assertTrue(
              book.bank().approaches().stream()
                  .filter(a -> !a.family().equals("settings"))
                  .allMatch(a -> isOut(a.id(), answers)),
              told);
      case BAND_GAP -> {
        assertTrue(answers.byFact().size() > 0, told);
        assertFalse(one.subjects().stream().anyMatch(firing::contains), told);
      }
      default -> throw new AssertionError("no answers were expected to show " + one);
    }
  }

  /** What is left of the points of the first rule after what the others take off. */
  private int left(Advisory one, Set<String> firing) {
    assertTrue(firing.contains(one.subjects().get(0)), one + " of " + firing);
    int left = 0;
    for (Rule rule : book.bank().rules()) {
      if (one.subjects().contains(rule.key()) && firing.contains(rule.key())) {
        left +=
            rule.effects().support().stream()
                .filter(s -> s.approach().equals(one.details().get(0)))
                .mapToInt(Rule.Support::points)
                .sum();
      }
    }
    return left;
  }

  private boolean isOut(String approach, Answers answers) {
    return book.advise(answers).standings().stream()
        .filter(s -> s.approach().id().equals(approach))
        .allMatch(s -> s.status() == Standing.Status.RULED_OUT);
  }

  /** The answers with every other question answered by chance; those that do not apply as well. */
  private Answers filled(Answers shown) {
    Answers answers = shown;
    for (Field field : List.copyOf(book.bank().questionnaire().fieldsByFact().values())) {
      if (!shown.byFact().containsKey(field.fact())) {
        answers =
            answers.with(
                field.fact(),
                new Answers.Recorded(
                    new Answer.Given(dice.value(field.type())), Provenance.PLAYER_TOLD));
      }
    }
    return answers;
  }
}
