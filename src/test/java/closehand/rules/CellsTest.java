package closehand.rules;

import static closehand.rules.Outcome.FALSE;
import static closehand.rules.Outcome.OPEN;
import static closehand.rules.Outcome.TRUE;
import static closehand.rules.Say.answers;
import static closehand.rules.Say.has;
import static closehand.rules.Say.in;
import static closehand.rules.Say.is;
import static closehand.rules.Say.test;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import closehand.bank.Condition;
import closehand.interview.Answer.Reason;
import closehand.interview.Answers;
import java.util.List;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

/** Every kind of fact is compared exactly, up to the very threshold. */
class CellsTest {
  private static TestBank bank() {
    return new TestBank()
        .number("pain", 0, 10)
        .decimal("size", 12, 23, 1)
        .scale("steady", List.of(0, 5, 20, 50))
        .one("side", List.of("left", "right", "both"))
        .several("grip", List.of("none", "tip", "key"))
        .yesNo("chat");
  }

  private static Outcome outcome(Condition condition, Answers answers) {
    TestBank bank = bank();
    bank.rule("R", condition);
    return bank.book().find(0, answers).outcome();
  }

  @Test
  void aWholeNumberAgainstEachComparison() {
    for (int answer = 0; answer <= 10; answer++) {
      Answers answers = answers("pain", answer);
      assertEquals(truth(answer < 4), outcome(test("pain", "<", 4), answers));
      assertEquals(truth(answer <= 4), outcome(test("pain", "<=", 4), answers));
      assertEquals(truth(answer > 4), outcome(test("pain", ">", 4), answers));
      assertEquals(truth(answer >= 4), outcome(test("pain", ">=", 4), answers));
    }
  }

  @Test
  void aDecimalNumberRightAtTheThreshold() {
    assertEquals(TRUE, outcome(test("size", "<=", 18.3), answers("size", 18.3)));
    assertEquals(FALSE, outcome(test("size", "<", 18.3), answers("size", 18.3)));
    assertEquals(TRUE, outcome(test("size", ">", 18.3), answers("size", 18.4)));
    assertEquals(FALSE, outcome(test("size", ">=", 18.3), answers("size", 18.2)));
  }

  @Test
  void aScaleByNumberAndByCode() {
    assertEquals(TRUE, outcome(test("steady", ">=", 20), answers("steady", "20")));
    assertEquals(FALSE, outcome(test("steady", ">", 20), answers("steady", "20")));
    assertEquals(TRUE, outcome(is("steady", 20), answers("steady", "20")));
    assertEquals(TRUE, outcome(in("steady", "5", "20"), answers("steady", "5")));
    assertEquals(FALSE, outcome(is("steady", "50"), answers("steady", "5")));
  }

  @Test
  void optionsAndLists() {
    assertEquals(TRUE, outcome(is("side", "left"), answers("side", "left")));
    assertEquals(FALSE, outcome(in("side", "left", "both"), answers("side", "right")));
    assertEquals(TRUE, outcome(has("grip", "key"), answers("grip", List.of("tip", "key"))));
    assertEquals(FALSE, outcome(has("grip", "key"), answers("grip", List.of())));
    assertEquals(TRUE, outcome(has("grip", "none"), answers("grip", List.of())));
    assertEquals(FALSE, outcome(has("grip", "none"), answers("grip", List.of("tip"))));
    assertEquals(TRUE, outcome(is("chat", false), answers("chat", false)));
  }

  @Test
  void anOpenAnswerLeavesAComparisonOpenUnlessAllAnswersAgree() {
    for (Reason reason : List.of(Reason.UNKNOWN, Reason.DECLINED, Reason.LATER)) {
      assertEquals(OPEN, outcome(test("pain", ">=", 4), answers("pain", reason)));
    }
    assertEquals(OPEN, outcome(test("pain", ">=", 4), Answers.NONE));
    assertEquals(TRUE, outcome(test("pain", ">=", 0), Answers.NONE));
    assertEquals(TRUE, outcome(in("side", "left", "right", "both"), Answers.NONE));
  }

  @Test
  void whatDoesNotApplyIsNothing() {
    Answers answers = answers("pain", Reason.NOT_APPLICABLE, "side", Reason.NOT_APPLICABLE);
    assertEquals(FALSE, outcome(test("pain", ">=", 4), answers));
    assertEquals(FALSE, outcome(test("pain", "<", 4), answers));
    assertEquals(FALSE, outcome(in("side", "left", "right", "both"), answers));
  }

  @Test
  void aComparisonThatDoesNotSuitIsTheCallersMistake() {
    assertThrows(IllegalArgumentException.class, () -> outcome(is("pain", "4"), Answers.NONE));
    assertThrows(IllegalArgumentException.class, () -> outcome(is("nobody", true), Answers.NONE));
    assertThrows(IllegalArgumentException.class, () -> outcome(is("side", "up"), Answers.NONE));
    assertThrows(
        IllegalArgumentException.class, () -> outcome(is("chat", true), answers("chat", "yes")));
  }

  @Test
  void aLineLeavesOutCellsWithoutAValue() {
    Values whole = new Values.Grid(0, 10, 0);
    NumberLine line =
        NumberLine.of(List.of(whole), new TreeSet<>(List.of(4.0, Math.nextUp(3.0), 7.5)));
    assertEquals(3, line.cells());
    assertEquals(3.0, line.high(0));
    assertEquals(4.0, line.low(1));
    assertEquals(7.0, line.high(1));
    assertEquals(8.0, line.low(2));
  }

  @Test
  void aGridOfDecimalsIsExactThoughTenthsAreNot() {
    Values tenths = new Values.Grid(0, 1, 1);
    assertEquals(List.of(0.0, 0.1, 0.2, 0.3, 0.4, 0.5, 0.6, 0.7, 0.8, 0.9, 1.0), tenths.upTo(99));
    assertEquals(0.3, tenths.atLeast(0.3));
    assertEquals(0.2, tenths.below(0.3));
    assertEquals(Double.POSITIVE_INFINITY, tenths.atLeast(1.01));
    assertEquals(Double.NEGATIVE_INFINITY, tenths.below(0));
  }

  private static Outcome truth(boolean holds) {
    return holds ? TRUE : FALSE;
  }
}
