package closehand.rules;

import static closehand.bank.Term.Computation.COUNT;
import static closehand.bank.Term.Computation.DIFFERENCE;
import static closehand.rules.Outcome.FALSE;
import static closehand.rules.Outcome.OPEN;
import static closehand.rules.Outcome.TRUE;
import static closehand.rules.Say.answers;
import static closehand.rules.Say.is;
import static closehand.rules.Say.not;
import static closehand.rules.Say.test;
import static closehand.rules.Say.when;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import closehand.interview.Answer.Reason;
import closehand.interview.Answers;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What is worked out from answers is as certain as the answers allow, and no more. */
class TermsTest {
  @Test
  void theBestOfTwoHandsIsKnownOnceOneReachesIt() {
    TestBank bank = new TestBank().number("left", 0, 60).number("right", 0, 60);
    bank.max("best", "left", "right").rule("R", test("best", ">=", 20));
    RuleBook book = bank.book();
    assertEquals(TRUE, book.find(0, answers("left", 25)).outcome());
    assertEquals(OPEN, book.find(0, answers("left", 15)).outcome());
    assertEquals(List.of("right"), book.find(0, answers("left", 15)).waitsFor());
    assertEquals(FALSE, book.find(0, answers("left", 15, "right", 19)).outcome());
    assertEquals(List.of("left", "right"), book.find(0, Answers.NONE).waitsFor());
  }

  @Test
  void whatDoesNotApplyIsLeftOut() {
    TestBank bank = new TestBank().number("left", 0, 60).number("right", 0, 60);
    bank.max("best", "left", "right").min("least", "left", "right");
    bank.rule("best", test("best", "<", 20));
    bank.rule("least", test("least", ">=", 20));
    RuleBook book = bank.book();
    Answers oneHand = answers("left", Reason.NOT_APPLICABLE, "right", 10);
    assertEquals(TRUE, book.find(0, oneHand).outcome());
    assertEquals(FALSE, book.find(1, oneHand).outcome());
    Answers none = answers("left", Reason.NOT_APPLICABLE, "right", Reason.NOT_APPLICABLE);
    assertEquals(FALSE, book.find(0, none).outcome());
    assertEquals(FALSE, book.find(1, none).outcome());
  }

  @Test
  void aTermWaitsForWhetherAnyOfItsNumbersApplies() {
    TestBank bank = new TestBank().yesNo("hand").number("press", 0, 3, when("hand", true));
    bank.number("reach", 0, 9).max("best", "press", "reach").rule("R", test("best", "<", 5));
    RuleBook book = bank.book();
    Finding open = book.find(0, answers("reach", Reason.NOT_APPLICABLE));
    assertEquals(OPEN, open.outcome());
    assertEquals(List.of("press"), open.waitsFor());
    assertEquals(TRUE, book.find(0, answers("reach", 4)).outcome());
  }

  @Test
  void scalesAndNumbersShareOneLine() {
    TestBank bank = new TestBank().scale("a", List.of(0, 1, 2, 3)).number("b", 0, 10);
    bank.max("best", "a", "b").rule("R", test("best", ">", 3));
    bank.rule("S", is("a", "3"));
    RuleBook book = bank.book();
    assertEquals(OPEN, book.find(0, answers("a", "3")).outcome());
    assertEquals(List.of("b"), book.find(0, answers("a", "3")).waitsFor());
    assertEquals(FALSE, book.find(0, answers("b", 3)).outcome());
    assertEquals(TRUE, book.find(0, answers("b", 4)).outcome());
    assertEquals(TRUE, book.find(1, answers("a", "3")).outcome());
  }

  @Test
  void countingLeavesOutNone() {
    TestBank bank = new TestBank().several("panel", List.of("none", "a", "b", "c"));
    bank.computed("cells", COUNT, "panel").rule("R", test("cells", ">=", 2));
    bank.rule("S", test("cells", "<", 1));
    RuleBook book = bank.book();
    assertEquals(TRUE, book.find(0, answers("panel", List.of("a", "c"))).outcome());
    assertEquals(FALSE, book.find(0, answers("panel", List.of("b"))).outcome());
    assertEquals(TRUE, book.find(1, answers("panel", List.of("none"))).outcome());
    assertEquals(TRUE, book.find(1, answers("panel", List.of())).outcome());
    assertEquals(List.of("panel"), book.find(0, Answers.NONE).waitsFor());
  }

  @Test
  void aDifferenceIsKnownAsSoonAsTheRangeAllows() {
    TestBank bank = new TestBank().number("during", 0, 10).number("before", 0, 10);
    bank.computed("rise", DIFFERENCE, "during", "before").rule("R", test("rise", ">=", 3));
    RuleBook book = bank.book();
    assertEquals(TRUE, book.find(0, answers("during", 7, "before", 4)).outcome());
    assertEquals(FALSE, book.find(0, answers("during", 6, "before", 4)).outcome());
    assertEquals(FALSE, book.find(0, answers("during", 2)).outcome());
    assertEquals(OPEN, book.find(0, answers("during", 3)).outcome());
    assertEquals(List.of("before"), book.find(0, answers("during", 3)).waitsFor());
    assertEquals(FALSE, book.find(0, answers("during", Reason.NOT_APPLICABLE)).outcome());
  }

  @Test
  void aDifferenceOfLargeNumbersIsExactToo() {
    TestBank bank = new TestBank().number("a", 0, 500).number("b", 0, 500);
    bank.computed("gap", DIFFERENCE, "a", "b").rule("R", test("gap", "<=", 8));
    RuleBook book = bank.book();
    assertEquals(TRUE, book.find(0, answers("a", 308, "b", 300)).outcome());
    assertEquals(FALSE, book.find(0, answers("a", 309, "b", 300)).outcome());
    assertEquals(TRUE, book.find(0, answers("b", 492)).outcome());
    assertEquals(OPEN, book.find(0, answers("b", 491)).outcome());
  }

  @Test
  void derivedTermsBuildOnEachOther() {
    TestBank bank = new TestBank().yesNo("stiff").yesNo("weak");
    bank.derived("useless", not(is("useful", true)));
    bank.derived("useful", Say.all(is("stiff", false), is("weak", false)));
    bank.rule("R", is("useless", true));
    RuleBook book = bank.book();
    assertEquals(TRUE, book.find(0, answers("stiff", true)).outcome());
    assertEquals(List.of("stiff"), book.find(0, answers("stiff", true)).supportedBy());
    assertEquals(List.of("weak"), book.find(0, answers("stiff", false)).waitsFor());
  }

  @Test
  void aCycleIsNamedAndRefused() {
    TestBank bank = new TestBank().yesNo("a");
    bank.derived("one", is("two", true));
    bank.derived("two", is("three", true));
    bank.derived("three", Say.any(is("one", true), is("a", true)));
    bank.derived("after", is("three", true));
    assertEquals(List.of("one", "two", "three"), RuleBook.cycles(bank.build()));
    assertThrows(IllegalArgumentException.class, bank::book);
    TestBank gates = new TestBank().yesNo("a", when("b", true)).yesNo("b", when("a", true));
    assertEquals(List.of("a", "b"), RuleBook.cycles(gates.build()));
    assertEquals(List.of(), RuleBook.cycles(new TestBank().yesNo("a").build()));
  }

  @Test
  void tooManyCellsAreRefusedByName() {
    TestBank bank = new TestBank().number("a", 0, 100);
    for (int threshold = 1; threshold <= 63; threshold++) {
      bank.rule("R" + threshold, test("a", ">=", threshold));
    }
    assertThrows(IllegalArgumentException.class, bank::book);
  }
}
