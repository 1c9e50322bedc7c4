package closehand.rules;

import static closehand.rules.Say.all;
import static closehand.rules.Say.answers;
import static closehand.rules.Say.any;
import static closehand.rules.Say.is;
import static closehand.rules.Say.test;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import closehand.bank.CautionClass;
import closehand.bank.Condition;
import closehand.interview.Answers;
import closehand.interview.Dice;
import closehand.rules.why.Explanation;
import closehand.rules.why.Ground;
import closehand.rules.why.Part;
import closehand.rules.why.Subject;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Why something stands as it does: every rule about it is told, with what it rests on. */
class ExplanationTest {
  private static RuleBook book() {
    TestBank bank = new TestBank().approaches("MOUSE", "PAD").cautions("C-CARE");
    bank.number("reach", 0, 20).number("hours", 0, 10).yesNo("rests").yesNo("sore").yesNo("noisy");
    bank.derived("works", all(is("rests", true), test("reach", ">=", 6)));
    bank.rule("full", is("works", true)).points("MOUSE", 3);
    bank.rule("tired", test("hours", ">", 4)).unless(is("rests", true)).points("MOUSE", -1);
    bank.rule("sore", all(test("reach", ">=", 2), is("sore", true))).points("MOUSE", -2);
    bank.rule("near", all(is("rests", true), test("reach", "<", 6), is("sore", true)))
        .points("MOUSE", 1);
    bank.rule("pad", is("noisy", false)).points("PAD", 1);
    bank.rule("care", is("noisy", true)).raises("C-CARE", CautionClass.CARE);
    return bank.book();
  }

  private static Explanation why(Answers answers, String name) {
    RuleBook book = book();
    return Explanation.of(book, answers, Subject.of(book.bank(), name).orElseThrow());
  }

  private static List<String> rules(Explanation why, Ground.State state) {
    return why.in(state).stream().map(g -> g.rule().id()).toList();
  }

  @Test
  void everyRuleAboutAnApproachIsToldByWhatCameOfIt() {
    Explanation why = why(answers("reach", 8, "rests", true, "hours", 9), "mouse");
    assertEquals(List.of("full"), rules(why, Ground.State.FIRED));
    assertEquals(List.of("tired"), rules(why, Ground.State.HELD_BACK));
    assertEquals(List.of("sore"), rules(why, Ground.State.WAITING));
    assertEquals(List.of("near"), rules(why, Ground.State.NOT_FIRED));
    assertEquals(3, why.standing().orElseThrow().points());
    assertEquals(List.of("reach", "rests"), why.grounds().get(0).answersUsed());
    assertEquals(List.of("sore"), why.grounds().get(2).finding().waitsFor());
  }

  @Test
  void theFirstPartThatFailsIsNamed() {
    Explanation why = why(answers("reach", 8, "rests", true), "MOUSE");
    Part near = why.grounds().get(3).hindrance().orElseThrow();
    assertEquals(Outcome.FALSE, near.outcome());
    assertTrue(near.condition() instanceof Condition.Test t && t.operator().equals("<"));
    assertEquals(List.of("reach"), near.facts());
    Part open = why.grounds().get(2).hindrance().orElseThrow();
    assertEquals(Outcome.OPEN, open.outcome());
    assertEquals(List.of("sore"), open.waitsFor());
  }

  @Test
  void aWorkedOutFactStaysFoldedWithItsGroundsInside() {
    Part when = why(answers("reach", 3, "rests", true), "MOUSE").grounds().get(0).when();
    assertTrue(when.folded());
    assertEquals(Outcome.FALSE, when.outcome());
    assertEquals(List.of("reach"), when.facts());
    assertEquals(2, when.parts().get(0).parts().size());
  }

  @Test
  void cautionsAreExplainedTooAndUnknownNamesAreNone() {
    Explanation care = why(answers("noisy", true), "c-care");
    assertEquals(List.of("care"), rules(care, Ground.State.FIRED));
    assertTrue(Subject.of(book().bank(), "nothing").isEmpty());
  }

  /** A part that does not hold still does not when only the answers named with it are known. */
  @ParameterizedTest
  @ValueSource(longs = {61, 62, 63, 64, 65, 66})
  void theAnswersNamedWithAHindranceAloneBringItAbout(long seed) {
    RuleBook book = RuleBook.of(RandomBank.of(seed, 40, false));
    Dice dice = new Dice(seed);
    int tried = 0;
    for (int round = 0; round < 20; round++) {
      Answers some = RandomBank.part(book, RandomBank.fill(book, Answers.NONE, dice), 4, dice);
      for (String approach : RandomBank.APPROACHES) {
        Subject subject = Subject.of(book.bank(), approach).orElseThrow();
        for (Ground ground : Explanation.of(book, some, subject).grounds()) {
          if (ground.state() != Ground.State.FIRED) {
            Part part = ground.hindrance().orElseThrow();
            if (part.outcome() != Outcome.OPEN) {
              Answers only = Answers.NONE;
              for (String fact : part.facts()) {
                only = RandomBank.taking(only, fact, some);
              }
              assertEquals(
                  part.outcome(),
                  Workings.of(book, only).outcome(part.condition()),
                  ground.rule().id());
              tried++;
            }
          }
        }
      }
    }
    assertTrue(tried > 200, "hindrances tried: " + tried);
  }

  @Test
  void ofAnyTheWholeIsWhatFails() {
    TestBank bank = new TestBank().approaches("A").yesNo("x").yesNo("y");
    bank.rule("R", any(is("x", true), is("y", true))).points("A", 1);
    RuleBook book = bank.book();
    Explanation why =
        Explanation.of(
            book, answers("x", false, "y", false), Subject.of(book.bank(), "A").orElseThrow());
    assertEquals(List.of("x", "y"), why.grounds().get(0).hindrance().orElseThrow().facts());
  }
}
