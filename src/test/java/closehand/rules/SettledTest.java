package closehand.rules;

import static closehand.rules.Say.always;
import static closehand.rules.Say.answers;
import static closehand.rules.Say.is;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import closehand.bank.CautionClass;
import closehand.interview.Answers;
import closehand.interview.Dice;
import closehand.rules.why.Settled;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The few answers that alone decide a firm suggestion. */
class SettledTest {
  @Test
  void whatDoesNotMatterIsLeftOut() {
    TestBank bank = new TestBank().approaches("A", "B").cautions("C-STOP");
    bank.gate("sign", "no", "yes").yesNo("x").yesNo("y").yesNo("idle");
    bank.rule("stop", is("sign", "yes")).raises("C-STOP", CautionClass.STOP_ALL);
    bank.rule("a", is("x", true)).points("A", 3);
    bank.rule("b", is("y", true)).points("B", 2);
    RuleBook book = bank.book();
    Settled settled =
        Settled.of(book, answers("sign", "no", "x", true, "y", true, "idle", true)).orElseThrow();
    assertEquals("A", settled.leader());
    assertEquals(List.of("x"), settled.telling());
    assertEquals(List.of("sign"), settled.warningSigns());
    assertEquals(Optional.empty(), Settled.of(book, answers("x", true, "y", true)));
  }

  @Test
  void whereNothingLeadsNothingIsSettled() {
    TestBank bank = new TestBank().approaches("A").yesNo("x");
    bank.rule("a", is("x", true)).points("A", 1);
    bank.rule("idle", always());
    assertEquals(Optional.empty(), Settled.of(bank.book(), answers("x", false)));
  }

  @ParameterizedTest
  @ValueSource(longs = {431, 432, 433, 434, 435, 436})
  void theyAloneDecideItAndEachOfThemIsNeeded(long seed) {
    RuleBook book = RuleBook.of(RandomBank.of(seed, 14, false));
    Dice dice = new Dice(seed);
    int tried = 0;
    for (int round = 0; round < 40; round++) {
      Answers some = RandomBank.part(book, RandomBank.fill(book, Answers.NONE, dice), 8, dice);
      Optional<Settled> settled = Settled.of(book, some);
      if (settled.isPresent()) {
        tried++;
        List<String> facts = new ArrayList<>(settled.get().telling());
        facts.addAll(settled.get().warningSigns());
        Answers only = Answers.NONE;
        for (String fact : facts) {
          only = RandomBank.taking(only, fact, some);
        }
        Verdict verdict = book.verdict(only);
        assertTrue(verdict.firm());
        assertEquals(Optional.of(settled.get().leader()), verdict.leader());
        for (String fact : facts) {
          Verdict without = book.verdict(only.without(fact));
          assertFalse(without.firm() && without.sameLead(verdict), fact + " is not needed");
        }
      }
    }
    assertTrue(tried > 10, "firm ones tried: " + tried);
  }
}
