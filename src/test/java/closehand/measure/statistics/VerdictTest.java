package closehand.measure.statistics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

/** What is said after few tries. All tries are invented. */
class VerdictTest {
  private static Verdict more(Sample a, Sample b, Verdict.Order order) {
    return Verdict.of(a, b, Verdict.Good.MORE, order);
  }

  private static String words(Verdict verdict) {
    return VerdictWords.of(verdict, "The pad", "The mouse");
  }

  @Test
  void threeTriesEachAreTooFewHoweverFarApart() {
    Verdict verdict = more(Sample.of(1, 1, 1), Sample.of(9, 9, 9, 9), Verdict.Order.MIXED);
    assertEquals(new Verdict.TooFew(1, 0), verdict);
    assertEquals("Too few tries to tell. Still needed: 1 more with The pad.", words(verdict));
    assertEquals(
        "Too few tries to tell. Still needed: 4 more with The pad, 3 more with The mouse.",
        words(more(Sample.of(), Sample.of(3), Verdict.Order.MIXED)));
  }

  @Test
  void lessThanOnesOwnWobbleIsNoDifference() {
    Verdict verdict = more(Sample.of(5, 7, 6, 8), Sample.of(6, 8, 7, 8), Verdict.Order.MIXED);
    assertInstanceOf(Verdict.WithinWobble.class, verdict);
    assertEquals("Within normal wobble: your tries differ by as much anyway.", words(verdict));
    Sample same = Sample.of(8, 8, 8, 8);
    assertInstanceOf(Verdict.WithinWobble.class, more(same, same, Verdict.Order.MIXED));
  }

  @Test
  void moreThanWobbleThatChanceCouldDoIsToBeRepeated() {
    Verdict verdict = more(Sample.of(5, 5, 5, 8), Sample.of(8, 8, 8, 6.5), Verdict.Order.MIXED);
    Verdict.LooksBetter looks = assertInstanceOf(Verdict.LooksBetter.class, verdict);
    assertEquals(Verdict.Side.SECOND, looks.side());
    assertTrue(looks.difference().size() > looks.difference().wobble());
    assertFalse(looks.difference().chance().isSmall());
    assertEquals("The mouse looks better; repeat to be surer.", words(verdict));
  }

  @Test
  void moreThanWobbleAndThanChanceIsBetter() {
    Verdict verdict = more(Sample.of(5, 4, 6, 5, 5), Sample.of(8, 9, 8, 7, 9), Verdict.Order.MIXED);
    assertEquals("The mouse is better, also after allowing for wobble.", words(verdict));
    assertEquals(Verdict.Side.SECOND, verdict.ahead().orElseThrow());
    assertEquals(1, verdict.figures().orElseThrow().overlap().wonShare(), 0);
  }

  @Test
  void lessPainIsBetterThanMore() {
    Sample pad = Sample.of(3, 2, 3, 3, 2);
    Sample mouse = Sample.of(0, 1, 0, 0, 1);
    Verdict verdict = Verdict.of(pad, mouse, Verdict.Good.LESS, Verdict.Order.MIXED);
    assertEquals(Verdict.Side.SECOND, verdict.ahead().orElseThrow());
    assertEquals(2.6, verdict.figures().orElseThrow().first(), 1e-9);
    assertEquals(
        Verdict.Side.FIRST,
        Verdict.of(mouse, pad, Verdict.Good.LESS, Verdict.Order.MIXED).ahead().orElseThrow());
  }

  @Test
  void oneAfterTheOtherWhileStillLearningMayBePractice() {
    Sample first = Sample.of(1, 2, 3, 4, 5);
    Sample later = Sample.of(6, 7, 8, 9, 10);
    String may = " It may be practice: go back to the other one and try again.";
    assertTrue(words(more(first, later, Verdict.Order.FIRST_BEFORE_SECOND)).endsWith(may));
    assertTrue(words(more(later, first, Verdict.Order.SECOND_BEFORE_FIRST)).endsWith(may));
    assertFalse(words(more(first, later, Verdict.Order.MIXED)).endsWith(may));
    assertFalse(
        words(more(Sample.of(3, 3, 3, 3, 3), later, Verdict.Order.FIRST_BEFORE_SECOND))
            .endsWith(may),
        "nothing was being learnt");
    assertFalse(
        words(more(first, later, Verdict.Order.SECOND_BEFORE_FIRST)).endsWith(may),
        "practice cannot speak for the one that was tried first");
  }

  @Test
  void aVerdictSpeaksOfTheSetUpAndNeverOfThePerson() {
    for (Verdict verdict :
        List.of(
            new Verdict.TooFew(1, 1),
            more(Sample.of(5, 7, 6, 8), Sample.of(6, 8, 7, 8), Verdict.Order.MIXED),
            more(Sample.of(1, 2, 3, 4), Sample.of(6, 7, 8, 9), Verdict.Order.MIXED))) {
      String text = words(verdict) + VerdictWords.GROUND;
      for (String avoided : List.of("fail", "normal person", "score", "poor", "safe", "patient")) {
        assertFalse(text.contains(avoided), text);
      }
    }
  }
}
