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
import static org.junit.jupiter.api.Assertions.assertEquals;

import closehand.bank.Condition;
import closehand.interview.Answers;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * The connectives follow three-valued logic with null as "open". The 21 rows are those of the
 * logical operators And, Or and Not in HL7 Clinical Quality Language 1.5, Appendix B.
 */
class KleeneTest {
  static Stream<Arguments> rows() {
    return Stream.of(
        Arguments.of(TRUE, TRUE, TRUE, TRUE),
        Arguments.of(TRUE, FALSE, FALSE, TRUE),
        Arguments.of(TRUE, OPEN, OPEN, TRUE),
        Arguments.of(FALSE, TRUE, FALSE, TRUE),
        Arguments.of(FALSE, FALSE, FALSE, FALSE),
        Arguments.of(FALSE, OPEN, FALSE, OPEN),
        Arguments.of(OPEN, TRUE, OPEN, TRUE),
        Arguments.of(OPEN, FALSE, FALSE, OPEN),
        Arguments.of(OPEN, OPEN, OPEN, OPEN));
  }

  @ParameterizedTest
  @MethodSource("rows")
  void andOrOr(Outcome left, Outcome right, Outcome and, Outcome or) {
    assertEquals(and, outcome(all(is("left", true), is("right", true)), left, right));
    assertEquals(or, outcome(any(is("left", true), is("right", true)), left, right));
    assertEquals(and, outcome(atLeast(2, is("left", true), is("right", true)), left, right));
    assertEquals(or, outcome(atLeast(1, is("left", true), is("right", true)), left, right));
  }

  @Test
  void notTurnsRoundAndLeavesOpenOpen() {
    assertEquals(FALSE, outcome(not(is("left", true)), TRUE, OPEN));
    assertEquals(TRUE, outcome(not(is("left", true)), FALSE, OPEN));
    assertEquals(OPEN, outcome(not(is("left", true)), OPEN, OPEN));
  }

  @Test
  void unlessKeepsARuleFromFiringOnlyWhereItHolds() {
    TestBank bank = new TestBank().yesNo("left").yesNo("right");
    bank.rule("R", is("left", true)).unless(is("right", true));
    RuleBook book = bank.book();
    assertEquals(TRUE, book.find(0, answers("left", true, "right", false)).outcome());
    assertEquals(OPEN, book.find(0, answers("left", true)).outcome());
    Finding held = book.find(0, answers("left", true, "right", true));
    assertEquals(FALSE, held.outcome());
    assertEquals(true, held.heldBack());
    assertEquals(FALSE, book.find(0, answers("right", true)).outcome());
    assertEquals(false, book.find(0, answers("left", false, "right", true)).heldBack());
  }

  private static Outcome outcome(Condition condition, Outcome left, Outcome right) {
    TestBank bank = new TestBank().yesNo("left").yesNo("right");
    bank.rule("R", condition);
    Answers answers = Answers.NONE;
    answers = left == OPEN ? answers : Say.with(answers, "left", left == TRUE);
    answers = right == OPEN ? answers : Say.with(answers, "right", right == TRUE);
    return bank.book().find(0, answers).outcome();
  }
}
