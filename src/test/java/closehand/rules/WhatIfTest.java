package closehand.rules;

import static closehand.bank.Term.Computation.DIFFERENCE;
import static closehand.rules.Say.always;
import static closehand.rules.Say.answers;
import static closehand.rules.Say.has;
import static closehand.rules.Say.is;
import static closehand.rules.Say.test;
import static closehand.rules.Say.when;
import static closehand.rules.Standing.Status.NOT_SUGGESTED;
import static closehand.rules.Standing.Status.RULED_OUT;
import static closehand.rules.Standing.Status.STRONG;
import static closehand.rules.Standing.Status.UNDECIDED;
import static closehand.rules.Standing.Status.WORTH_TRYING;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import closehand.interview.Answer.Reason;
import closehand.interview.Answers;
import java.util.List;
import org.junit.jupiter.api.Test;

/** "What would have to be different?" is answered by trying it. */
class WhatIfTest {
  @Test
  void aNumberSaysFromWhereToWhere() {
    TestBank bank = new TestBank().approaches("MOUSE").number("slide", 0, 30).yesNo("other");
    bank.rule("good", test("slide", ">=", 5)).points("MOUSE", 1);
    bank.rule("better", test("slide", ">=", 10)).points("MOUSE", 1);
    bank.rule("out", test("slide", "<", 3)).excludes("MOUSE");
    WhatIf whatIf = WhatIf.of(bank.book(), answers("slide", 7, "other", true));
    assertEquals(
        List.of(
            new Change("slide", new Change.To.Between(3, 4), NOT_SUGGESTED),
            new Change("slide", new Change.To.Between(10, 30), STRONG),
            new Change("slide", new Change.To.Between(0, 2), RULED_OUT)),
        whatIf.changes("MOUSE"));
    assertEquals(List.of("MOUSE"), List.copyOf(whatIf.suggested().keySet()));
  }

  @Test
  void neighbouringCellsWithOneResultAreOneRange() {
    TestBank bank = new TestBank().approaches("MOUSE", "VOICE").decimal("size", 0, 9, 1);
    bank.rule("good", test("size", "<", 2)).points("MOUSE", 1);
    bank.rule("else", test("size", ">", 5.5)).points("VOICE", 1);
    WhatIf whatIf = WhatIf.of(bank.book(), answers("size", 1.5));
    assertEquals(
        List.of(new Change("size", new Change.To.Between(2, 9), NOT_SUGGESTED)),
        whatIf.changes("MOUSE"));
    assertEquals(
        List.of(new Change("size", new Change.To.Between(5.6, 9), WORTH_TRYING)),
        whatIf.changes("VOICE"));
  }

  @Test
  void rangesBelowAndAboveTheAnswerStayApart() {
    TestBank bank = new TestBank().approaches("MOUSE").number("slide", 0, 30);
    bank.rule("R", Say.all(test("slide", ">=", 4), test("slide", "<", 9))).points("MOUSE", 1);
    assertEquals(
        List.of(
            new Change("slide", new Change.To.Between(0, 3), NOT_SUGGESTED),
            new Change("slide", new Change.To.Between(9, 30), NOT_SUGGESTED)),
        WhatIf.of(bank.book(), answers("slide", 5)).changes("MOUSE"));
  }

  @Test
  void optionsPicksAndYesOrNo() {
    TestBank bank = new TestBank().approaches("A");
    bank.one("side", List.of("left", "right", "both")).several("sites", List.of("none", "p", "q"));
    bank.yesNo("loud").scale("clear", List.of(0, 1, 2));
    bank.rule("side", is("side", "left")).points("A", 1);
    bank.rule("loud", is("loud", true)).excludes("A");
    bank.rule("sites", has("sites", "p")).points("A", -1);
    bank.rule("clear", test("clear", ">=", 1)).points("A", 1);
    Answers now = answers("side", "left", "sites", List.of("q"), "loud", false, "clear", "2");
    assertEquals(
        List.of(
            new Change("side", new Change.To.Option("right"), WORTH_TRYING),
            new Change("side", new Change.To.Option("both"), WORTH_TRYING),
            new Change("sites", new Change.To.Picked("p", true), WORTH_TRYING),
            new Change("loud", new Change.To.Flag(true), RULED_OUT),
            new Change("clear", new Change.To.Option("0"), WORTH_TRYING)),
        WhatIf.of(bank.book(), now).changes("A"));
  }

  @Test
  void takingTheLastPickAwayMeansNone() {
    TestBank bank = new TestBank().approaches("A").several("sites", List.of("none", "p", "q"));
    bank.rule("none", has("sites", "none")).points("A", 1);
    WhatIf one = WhatIf.of(bank.book(), answers("sites", List.of("p")));
    assertEquals(
        List.of(
            new Change("sites", new Change.To.Picked("none", true), WORTH_TRYING),
            new Change("sites", new Change.To.Picked("p", false), WORTH_TRYING)),
        one.changes("A"));
    WhatIf none = WhatIf.of(bank.book(), answers("sites", List.of("none")));
    assertEquals(
        List.of(
            new Change("sites", new Change.To.Picked("p", true), NOT_SUGGESTED),
            new Change("sites", new Change.To.Picked("q", true), NOT_SUGGESTED)),
        none.changes("A"));
  }

  @Test
  void anAnswerThatSwitchesAnotherOffCountsToo() {
    TestBank bank = new TestBank().approaches("A").yesNo("hand");
    bank.yesNo("press", when("hand", true)).yesNo("deep", when("press", true));
    bank.rule("R", is("deep", true)).points("A", 2);
    Answers on = answers("hand", true, "press", true, "deep", true);
    assertEquals(
        List.of(
            new Change("hand", new Change.To.Flag(false), NOT_SUGGESTED),
            new Change("press", new Change.To.Flag(false), NOT_SUGGESTED),
            new Change("deep", new Change.To.Flag(false), NOT_SUGGESTED)),
        WhatIf.of(bank.book(), on).changes("A"));
    Answers off = answers("hand", false, "press", true);
    assertEquals(
        List.of(new Change("hand", new Change.To.Flag(true), UNDECIDED)),
        WhatIf.of(bank.book(), off).changes("A"));
  }

  @Test
  void aDifferenceIsTriedNumberByNumber() {
    TestBank bank = new TestBank().approaches("A").number("during", 0, 10).number("before", 0, 10);
    bank.computed("rise", DIFFERENCE, "during", "before");
    bank.rule("start", always()).points("A", 1);
    bank.rule("R", test("rise", ">=", 2)).points("A", -1);
    assertEquals(
        List.of(
            new Change("during", new Change.To.Between(6, 10), NOT_SUGGESTED),
            new Change("before", new Change.To.Between(0, 3), NOT_SUGGESTED)),
        WhatIf.of(bank.book(), answers("during", 5, "before", 4)).changes("A"));
  }

  @Test
  void onlyAnsweredQuestionsAreTried() {
    TestBank bank = new TestBank().approaches("A").yesNo("a").yesNo("b");
    bank.rule("a", is("a", true)).points("A", 1);
    bank.rule("b", is("b", true)).points("A", 1);
    WhatIf whatIf = WhatIf.of(bank.book(), answers("a", Reason.DECLINED, "b", true));
    assertEquals(
        List.of(new Change("b", new Change.To.Flag(false), UNDECIDED)), whatIf.changes("A"));
    assertThrows(IllegalArgumentException.class, () -> whatIf.changes("B"));
  }
}
