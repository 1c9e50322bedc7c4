package closehand.rules;

import static closehand.rules.Outcome.FALSE;
import static closehand.rules.Outcome.OPEN;
import static closehand.rules.Outcome.TRUE;
import static closehand.rules.Say.answers;
import static closehand.rules.Say.how;
import static closehand.rules.Say.is;
import static closehand.rules.Say.not;
import static closehand.rules.Say.test;
import static closehand.rules.Say.when;
import static closehand.rules.Say.whenAny;
import static org.junit.jupiter.api.Assertions.assertEquals;

import closehand.bank.EnableWhen.Operator;
import closehand.interview.Answer.Reason;
import closehand.interview.Answers;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A question that an earlier answer switched off says nothing, whatever was once answered. */
class ApplicabilityTest {
  private static TestBank drivesItself() {
    TestBank bank = new TestBank().one("seat", List.of("sofa", "powered"));
    bank.one("drive", List.of("hand", "chin"), when("seat", "powered"));
    bank.rule("R", is("drive", "chin"));
    bank.rule("S", not(is("drive", "chin")));
    return bank;
  }

  @Test
  void switchedOffItsAnswerIsSetAside() {
    RuleBook book = drivesItself().book();
    assertEquals(FALSE, book.find(0, answers("seat", "sofa", "drive", "chin")).outcome());
    assertEquals(TRUE, book.find(1, answers("seat", "sofa", "drive", "chin")).outcome());
    assertEquals(List.of("seat"), book.find(0, answers("seat", "sofa")).supportedBy());
  }

  @Test
  void switchedOnItCounts() {
    RuleBook book = drivesItself().book();
    assertEquals(TRUE, book.find(0, answers("seat", "powered", "drive", "chin")).outcome());
    assertEquals(OPEN, book.find(0, answers("seat", "powered")).outcome());
    assertEquals(List.of("drive"), book.find(0, answers("seat", "powered")).waitsFor());
  }

  @Test
  void whileThatIsOpenAnAnswerCountsAndNoAnswerIsOpen() {
    RuleBook book = drivesItself().book();
    assertEquals(TRUE, book.find(0, answers("drive", "chin")).outcome());
    assertEquals(OPEN, book.find(0, Answers.NONE).outcome());
    assertEquals(OPEN, book.find(0, answers("seat", Reason.DECLINED)).outcome());
  }

  @Test
  void whatHangsOnAnInapplicableQuestionDoesNotApplyEither() {
    TestBank bank = new TestBank().yesNo("a");
    bank.yesNo("b", when("a", true)).yesNo("c", when("b", Operator.NOT_EQUAL, true));
    bank.rule("R", how("c", "notAsked")).unless(is("c", true));
    RuleBook book = bank.book();
    assertEquals(FALSE, book.find(0, answers("a", false)).outcome());
    assertEquals(List.of("a"), book.find(0, answers("a", false)).supportedBy());
    assertEquals(OPEN, book.find(0, answers("a", true, "b", false)).outcome());
  }

  @Test
  void anyOfSeveralConditionsSuffices() {
    TestBank bank = new TestBank().number("now", 0, 10).number("later", 0, 10);
    bank.words(
        "where", whenAny(when("now", Operator.AT_LEAST, 1), when("later", Operator.AT_LEAST, 1)));
    bank.rule("R", how("where", "notAsked"));
    RuleBook book = bank.book();
    assertEquals(TRUE, book.find(0, answers("now", 3)).outcome());
    assertEquals(OPEN, book.find(0, answers("now", 0)).outcome());
    assertEquals(FALSE, book.find(0, answers("now", 0, "later", 0)).outcome());
  }

  @Test
  void existsWordsAndListsAsFhirHasThem() {
    TestBank bank = new TestBank().words("label").several("parts", List.of("none", "arm", "leg"));
    bank.yesNo("a", when("label", Operator.EXISTS, true));
    bank.yesNo("b", when("label", new Say.Text("stroke")));
    bank.yesNo("c", when("parts", "arm"));
    bank.yesNo("d", when("parts", Operator.NOT_EQUAL, "none"));
    List.of("a", "b", "c", "d").forEach(fact -> bank.rule(fact, how(fact, "notAsked")));
    RuleBook book = bank.book();
    Answers answers = answers("label", new Say.Text("other"), "parts", List.of("leg"));
    assertEquals(TRUE, book.find(0, answers).outcome());
    assertEquals(FALSE, book.find(1, answers).outcome());
    assertEquals(FALSE, book.find(2, answers).outcome());
    assertEquals(TRUE, book.find(3, answers).outcome());
    assertEquals(OPEN, book.find(0, Answers.NONE).outcome());
    assertEquals(OPEN, book.find(0, answers("label", Reason.DECLINED)).outcome());
    assertEquals(TRUE, book.find(1, answers("label", new Say.Text("stroke"))).outcome());
    assertEquals(FALSE, book.find(3, answers("parts", List.of())).outcome());
  }

  @Test
  void notKnownOnASafetyQuestionCountsAsUnsure() {
    TestBank bank = new TestBank().gate("neck", "none", "symptoms", "unsure");
    bank.gate("chest", "no", "now").one("plain", List.of("no", "unsure"));
    bank.rule("neck", is("neck", "unsure"));
    bank.rule("chest", is("chest", "now"));
    bank.rule("plain", is("plain", "unsure"));
    bank.rule("how", how("neck", "notKnown"));
    RuleBook book = bank.book();
    Answers unknown =
        answers("neck", Reason.UNKNOWN, "chest", Reason.UNKNOWN, "plain", Reason.UNKNOWN);
    assertEquals(TRUE, book.find(0, unknown).outcome());
    assertEquals(OPEN, book.find(1, unknown).outcome());
    assertEquals(OPEN, book.find(2, unknown).outcome());
    assertEquals(TRUE, book.find(3, unknown).outcome());
    assertEquals(OPEN, book.find(0, answers("neck", Reason.DECLINED)).outcome());
  }

  @Test
  void howAFactIsKnown() {
    TestBank bank = new TestBank().yesNo("gate").yesNo("a", when("gate", true));
    bank.rule("silent", how("a", "declined", "notKnown"));
    bank.rule("open", how("a", "notAsked", "later"));
    bank.rule("given", how("a", "given"));
    RuleBook book = bank.book();
    Answers on = answers("gate", true);
    outcomes(book, on, OPEN, TRUE, OPEN);
    outcomes(book, Say.with(on, "a", Reason.LATER), OPEN, TRUE, OPEN);
    outcomes(book, Say.with(on, "a", Reason.DECLINED), TRUE, FALSE, FALSE);
    outcomes(book, Say.with(on, "a", Reason.UNKNOWN), TRUE, FALSE, FALSE);
    outcomes(book, Say.with(on, "a", true), FALSE, FALSE, TRUE);
    outcomes(book, Say.with(on, "a", Reason.NOT_APPLICABLE), FALSE, FALSE, FALSE);
    outcomes(book, answers("gate", false, "a", true), FALSE, FALSE, FALSE);
    outcomes(book, Answers.NONE, OPEN, OPEN, OPEN);
  }

  private static void outcomes(RuleBook book, Answers answers, Outcome... expected) {
    for (int rule = 0; rule < expected.length; rule++) {
      assertEquals(expected[rule], book.find(rule, answers).outcome(), "rule " + rule);
    }
  }

  @Test
  void answersOfAnotherBankArePassedOver() {
    TestBank bank = new TestBank().number("pain", 0, 10);
    bank.rule("R", test("pain", ">", 3));
    assertEquals(TRUE, bank.book().find(0, answers("pain", 5, "nobody", true)).outcome());
  }
}
