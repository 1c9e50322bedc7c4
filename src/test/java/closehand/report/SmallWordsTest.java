package closehand.report;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;

/** The small pieces of wording: dates, lists, grids. */
class SmallWordsTest {
  @Test
  void aDateIsWrittenOut() {
    assertEquals("5 November 2026", PlainDate.of("2026-11-05"));
    assertEquals("31 January 2027", PlainDate.of("2027-01-31"));
  }

  @Test
  void whatIsNoDateStaysAsItIs() {
    for (String odd :
        List.of("", "today", "2026-13-01", "2026-00-10", "20261105xx", "2026-1x-05")) {
      assertEquals(odd, PlainDate.of(odd));
    }
  }

  @Test
  void aListReadsAsOneSentence() {
    assertEquals(
        "Plain mouse; foot switch; AAC",
        Phrases.listed(List.of("Plain mouse", "Foot switch", "AAC")));
    assertEquals("one, two and three", Phrases.and(List.of("one", "two", "three")));
    assertEquals("1 question", Phrases.count(1, "question"));
    assertEquals("41 questions", Phrases.count(41, "question"));
  }

  @Test
  void wordsThatMustKeepTheirCapitalKeepIt() {
    assertEquals("I shift myself", Phrases.lower("I shift myself"));
    assertEquals("AAC", Phrases.lower("AAC"));
    assertEquals("loud", Phrases.lower("Loud"));
  }

  @Test
  void equalAnswersInAGridAreSaidOnce() {
    assertEquals(
        "left thumb, index finger: A trigger; left ring finger, right thumb: A light key",
        Grid.sentence(
            List.of(
                new Grid.Cell("Left thumb", "A trigger"),
                new Grid.Cell("Left index finger", "A trigger"),
                new Grid.Cell("Left ring finger", "A light key"),
                new Grid.Cell("Right thumb", "A light key"))));
  }

  @Test
  void whatSeveralLabelsBeginWithIsSaidOnce() {
    assertEquals(
        "left hand main button, wheel: Thumb; right hand wheel: Ring finger",
        Grid.sentence(
            List.of(
                new Grid.Cell("Left hand: main button", "Thumb"),
                new Grid.Cell("Left hand: wheel", "Thumb"),
                new Grid.Cell("Right hand: wheel", "Ring finger"))));
    assertEquals("head turn, head back: No", Grid.row(List.of("Head turn", "Head back")) + ": No");
    assertEquals(
        "pain now, 0 to 10 and pain later, 0 to 10",
        Grid.row(List.of("Pain now, 0 to 10", "Pain later, 0 to 10")));
  }

  @Test
  void sentencesThatDifferInOnePlaceBecomeOne() {
    assertEquals(
        List.of("Rest your left thumb, index finger and right thumb today."),
        Merged.sentences(
            List.of(
                "Rest your left thumb today.",
                "Rest your left index finger today.",
                "Rest your right thumb today.")));
    assertEquals(
        List.of("Your left and right side does not press."),
        Merged.sentences(
            List.of("Your left side does not press.", "Your right side does not press.")));
  }

  @Test
  void sentencesThatDifferMoreStayApart() {
    List<String> two = List.of("Rest your left thumb.", "Move your head.");
    assertEquals(two, Merged.sentences(two));
    assertEquals(List.of("One."), Merged.sentences(List.of("One.", "One.")));
    assertEquals(
        List.of("Rest your thumb.", "Rest your thumb. Really."),
        Merged.sentences(List.of("Rest your thumb.", "Rest your thumb. Really.")));
  }
}
