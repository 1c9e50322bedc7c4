package closehand.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import closehand.interview.Answers;
import closehand.interview.Dice;
import closehand.rules.why.Settled;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Which open answers can still overturn what leads, and which few answers decide it. */
class OverturningTest {

  /** Whatever else is answered, the lead stays; and what is not firm has something to name. */
  @ParameterizedTest
  @ValueSource(longs = {531, 532, 533, 534, 535, 536})
  void answersThatAreNotNamedOverturnNothing(long seed) {
    RuleBook book = RuleBook.of(RandomBank.of(seed, 14, false));
    Dice dice = new Dice(seed);
    int tried = 0;
    for (int round = 0; round < 40; round++) {
      Answers whole = RandomBank.fill(book, Answers.NONE, dice);
      Answers some = RandomBank.part(book, whole, 3, dice);
      Workings workings = Workings.of(book, some);
      Verdict now = book.verdict(some);
      Set<String> named = new HashSet<>(workings.overturning());
      workings.advice().notCleared().forEach(w -> named.addAll(w.waitsFor()));
      if (now.leader().isEmpty()) {
        continue;
      }
      assertEquals(now.firm(), named.isEmpty(), () -> "named: " + named);
      Answers filled = some;
      for (String fact : RandomBank.shuffled(whole, dice)) {
        boolean open = some.answer(fact).isEmpty();
        if (open && !named.contains(fact)) {
          filled = RandomBank.taking(filled, fact, whole);
        }
      }
      assertTrue(book.verdict(filled).sameLead(now));
      tried++;
    }
    assertTrue(tried > 10, "tried: " + tried);
  }

  /**
   * With the deciding answers alone it leads as firmly, and without any one of them it does not.
   */
  @Test
  void theDecidingAnswersOfThePlayersDecideAlone() {
    RuleBook book = RuleBook.of(GoldAnswers.bank());
    int firm = 0;
    for (Answers all : GoldAnswers.of(book.bank()).values()) {
      Optional<Settled> settled = Settled.of(book, all);
      assertEquals(book.verdict(all).firm(), settled.isPresent());
      if (settled.isEmpty()) {
        continue;
      }
      List<String> facts = new ArrayList<>(settled.get().telling());
      facts.addAll(settled.get().warningSigns());
      Answers only = all;
      for (String fact : all.byFact().keySet()) {
        only = facts.contains(fact) ? only : only.without(fact);
      }
      Verdict verdict = book.verdict(only);
      assertTrue(verdict.firm());
      assertEquals(Optional.of(settled.get().leader()), verdict.leader());
      for (String fact : facts) {
        Verdict without = book.verdict(only.without(fact));
        assertFalse(without.firm() && without.sameLead(verdict), fact + " is not needed");
      }
      firm++;
    }
    assertTrue(firm >= 5, "firm: " + firm);
  }
}
