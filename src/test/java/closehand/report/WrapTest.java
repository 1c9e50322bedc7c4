package closehand.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class WrapTest {
  @Test
  void aShortTextStaysOnOneLine() {
    assertEquals(List.of("- Rest."), Wrap.lines("- ", "  ", "Rest."));
  }

  @Test
  void theNextLinesHangUnderTheFirst() {
    List<String> lines = Wrap.lines("1. ", "   ", "word ".repeat(20));
    assertEquals(2, lines.size());
    assertTrue(lines.get(0).startsWith("1. word"));
    assertTrue(lines.get(1).startsWith("   word"));
  }

  @Test
  void nothingGivesNoLine() {
    assertEquals(List.of(), Wrap.lines("", "", "   "));
  }

  @Test
  void aWordLongerThanALineIsCutBetweenCharacters() {
    List<String> lines = Wrap.lines("", "", "😀".repeat(100));
    assertEquals(List.of("😀".repeat(72), "😀".repeat(28)), lines);
  }

  @Test
  void noRoomForTextIsAMistakeOfTheCaller() {
    assertThrows(IllegalArgumentException.class, () -> Wrap.lines(" ".repeat(70), "", "word"));
  }

  @Test
  void everyWordComesThroughInOrderAndNoLineIsTooLong() {
    Dice dice = new Dice(72);
    for (int round = 0; round < 2000; round++) {
      String text = Clean.of(dice.text(400), Glyphs.UNICODE);
      String hang = " ".repeat(dice.below(6));
      List<String> lines = Wrap.lines(hang, hang, text);
      StringBuilder printed = new StringBuilder();
      for (String line : lines) {
        assertTrue(line.codePointCount(0, line.length()) <= Wrap.WIDTH, line);
        assertTrue(!line.endsWith(" "), "trailing space");
        printed.append(line.substring(hang.length()));
      }
      assertEquals(text.replace(" ", ""), printed.toString().replace(" ", ""));
    }
  }

  @Test
  void aLineIsOnlyBrokenWhenTheNextWordDoesNotFit() {
    Dice dice = new Dice(5);
    for (int round = 0; round < 500; round++) {
      List<String> words = new ArrayList<>();
      for (int i = 0; i < 60; i++) {
        words.add("x".repeat(1 + dice.below(12)));
      }
      List<String> lines = Wrap.lines("", "", String.join(" ", words));
      assertEquals(words, List.of(String.join(" ", lines).split(" ")));
      for (int i = 1; i < lines.size(); i++) {
        String next = lines.get(i).split(" ", 2)[0];
        assertTrue(lines.get(i - 1).length() + 1 + next.length() > Wrap.WIDTH);
      }
    }
  }
}
