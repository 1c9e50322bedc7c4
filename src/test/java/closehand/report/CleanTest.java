package closehand.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

/** Nothing that somebody typed can steer a terminal, hide, or turn the reading direction. */
class CleanTest {
  @Test
  void plainWordsStayAsTheyAre() {
    assertEquals("Walk, run & jump!", Clean.of("Walk, run & jump!", Glyphs.UNICODE));
    assertEquals("Zoë said ‘go’", Clean.of("Zoë said ‘go’", Glyphs.UNICODE));
  }

  @Test
  void anEscapeSequenceLosesItsTeeth() {
    assertEquals("\uFFFD[2J", Clean.of("\u001b[2J", Glyphs.UNICODE));
    assertEquals("?[2J", Clean.of("\u001b[2J", Glyphs.ASCII));
  }

  @Test
  void lineEndsAndTabsBecomeSpaces() {
    assertEquals("a b  c d", Clean.of("a\tb\r\nc\u00a0d", Glyphs.UNICODE));
  }

  @Test
  void directionMarksAndInvisibleOnesAreReplaced() {
    assertEquals("a\uFFFDb\uFFFDc", Clean.of("a\u202eb\u200bc", Glyphs.UNICODE));
    assertEquals("\uFFFD\uFFFD\uFFFD", Clean.of("\ue000\ufdd0\ud800", Glyphs.UNICODE));
  }

  @Test
  void joinersThatWordsNeedStay() {
    String persian = "\u0645\u06cc\u200c\u062e\u0648\u0627\u0647\u0645";
    assertEquals(persian, Clean.of(persian, Glyphs.UNICODE));
  }

  @Test
  void lettersAreComposedAndTheirMarksAreFew() {
    assertEquals("é", Clean.of("e\u0301", Glyphs.UNICODE));
    assertEquals(
        "g" + "\u0316".repeat(4) + "h", Clean.of("g" + "\u0316".repeat(90) + "h", Glyphs.UNICODE));
  }

  @Test
  void asciiWritesLettersWithoutMarksAndSignsInAnotherWay() {
    assertEquals("Zoe, Lukasz and Oyvind", Clean.of("Zoë, Łukasz and Øyvind", Glyphs.ASCII));
    assertEquals("\"go\" - 20 degrees, 1/2, >= 3", Clean.of("“go” – 20°, ½, ≥ 3", Glyphs.ASCII));
    assertEquals("strasse ... 5 x 5", Clean.of("straße … 5 × 5", Glyphs.ASCII));
    assertEquals("??", Clean.of("日本", Glyphs.ASCII));
  }

  @Test
  void whateverIsTypedComesOutPrintable() {
    Dice dice = new Dice(20261125);
    for (int round = 0; round < 5000; round++) {
      String typed = dice.text(60);
      String clean = Clean.of(typed, Glyphs.UNICODE);
      assertPrintable(clean);
      assertEquals(clean, Clean.of(clean, Glyphs.UNICODE), "cleaning twice changes nothing");
      String ascii = Clean.of(typed, Glyphs.ASCII);
      assertTrue(ascii.chars().allMatch(c -> c >= ' ' && c <= '~'), ascii);
    }
  }

  private static void assertPrintable(String clean) {
    int marks = 0;
    for (int i = 0; i < clean.length(); ) {
      int point = clean.codePointAt(i);
      i += Character.charCount(point);
      boolean joiner = point == 0x200c || point == 0x200d;
      int type = Character.getType(point);
      boolean mark =
          type == Character.NON_SPACING_MARK
              || type == Character.ENCLOSING_MARK
              || type == Character.COMBINING_SPACING_MARK;
      marks = mark ? marks + 1 : joiner ? marks : 0;
      assertTrue(marks <= 4, "too many marks");
      assertFalse(Character.isISOControl(point) || (type == Character.FORMAT && !joiner));
      assertFalse(type == Character.SURROGATE || type == Character.PRIVATE_USE);
      assertFalse(type == Character.LINE_SEPARATOR || type == Character.PARAGRAPH_SEPARATOR);
      assertTrue((point & 0xFFFE) != 0xFFFE, "a noncharacter");
    }
  }
}
