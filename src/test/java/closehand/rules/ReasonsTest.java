package closehand.rules;

import static closehand.rules.Outcome.FALSE;
import static closehand.rules.Outcome.OPEN;
import static closehand.rules.Outcome.TRUE;
import static closehand.rules.Say.all;
import static closehand.rules.Say.answers;
import static closehand.rules.Say.any;
import static closehand.rules.Say.atLeast;
import static closehand.rules.Say.is;
import static closehand.rules.Say.not;
import static closehand.rules.Say.test;
import static org.junit.jupiter.api.Assertions.assertEquals;

import closehand.bank.Condition;
import closehand.interview.Answer.Reason;
import closehand.interview.Answers;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Every outcome names the answers it rests on, or the questions it waits for. */
class ReasonsTest {
  private static Finding find(Condition when, Answers answers) {
    TestBank bank = new TestBank().yesNo("a").yesNo("b").yesNo("c").number("x", 0, 9);
    bank.number("y", 0, 9).number("z", 0, 9).max("best", "x", "y", "z");
    bank.derived("ab", all(is("a", true), is("b", true)));
    bank.rule("R", when);
    return bank.book().find(0, answers);
  }

  private static void rests(Condition when, Answers answers, Outcome outcome, String... facts) {
    Finding finding = find(when, answers);
    assertEquals(outcome, finding.outcome());
    assertEquals(List.of(facts), finding.supportedBy());
  }

  private static void waits(Condition when, Answers answers, String... facts) {
    Finding finding = find(when, answers);
    assertEquals(OPEN, finding.outcome());
    assertEquals(List.of(facts), finding.waitsFor());
  }

  @Test
  void allRestsOnEveryPartOrOnTheFirstThatDoesNotHold() {
    Condition all = all(is("c", true), is("a", true), is("b", true));
    rests(all, answers("a", true, "b", true, "c", true), TRUE, "a", "b", "c");
    rests(all, answers("a", false, "b", false, "c", true), FALSE, "a");
  }

  @Test
  void anyRestsOnTheFirstThatHoldsOrOnEveryPart() {
    Condition any = any(is("c", true), is("a", true));
    rests(any, answers("a", true, "c", true), TRUE, "c");
    rests(any, answers("a", false, "c", false), FALSE, "a", "c");
    rests(not(any), answers("a", true), FALSE, "a");
  }

  @Test
  void atLeastRestsOnJustEnough() {
    Condition two = atLeast(2, is("a", true), is("b", true), is("c", true));
    rests(two, answers("a", true, "b", true, "c", true), TRUE, "a", "b");
    rests(two, answers("a", false, "b", true, "c", false), FALSE, "a", "c");
    waits(two, answers("a", true, "b", false), "c");
    waits(two, answers("a", true), "b", "c");
  }

  @Test
  void termsAreReplacedByTheAnswersBehindThem() {
    rests(is("ab", true), answers("a", true, "b", true), TRUE, "a", "b");
    rests(is("ab", true), answers("b", false), FALSE, "b");
    waits(is("ab", false), answers("a", true), "b");
    rests(test("best", ">=", 5), answers("y", 6, "z", 2), TRUE, "y");
    rests(test("best", "<", 5), answers("x", 1, "y", 2, "z", 3), TRUE, "x", "y", "z");
    rests(test("best", "<", 5), answers("x", 1, "z", 7), FALSE, "z");
    waits(test("best", "<", 5), answers("x", 1), "y", "z");
  }

  @Test
  void aDecidedPartIsNotWaitedFor() {
    waits(all(any(is("a", true), is("b", true)), is("c", true)), answers("a", true), "c");
    waits(any(all(is("a", true), is("b", true)), is("c", true)), answers("a", false), "c");
  }

  @Test
  void anOpenRuleNamesWhatIsKnownSoFar() {
    Finding finding = find(all(is("a", true), is("b", true)), answers("a", true));
    assertEquals(List.of("a"), finding.supportedBy());
    assertEquals(List.of("b"), finding.waitsFor());
  }

  @Test
  void anAnswerWithoutValueSettlesNothing() {
    waits(is("a", true), answers("a", Reason.DECLINED), "a");
    rests(test("x", ">=", 0), answers("x", Reason.DECLINED), TRUE);
    rests(is("a", true), answers("a", Reason.NOT_APPLICABLE), FALSE, "a");
  }

  @Test
  void aRuleHeldBackRestsOnBothItsParts() {
    TestBank bank = new TestBank().yesNo("a").yesNo("b");
    bank.rule("R", is("a", true)).unless(is("b", true));
    RuleBook book = bank.book();
    assertEquals(List.of("a", "b"), book.find(0, answers("a", true, "b", true)).supportedBy());
    assertEquals(List.of("b"), book.find(0, answers("b", true)).supportedBy());
    assertEquals(List.of("a"), book.find(0, answers("a", false)).supportedBy());
  }
}
