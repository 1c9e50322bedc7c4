package closehand.interview;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Characters by which words could take over a screen, hide, or read otherwise than they stand. */
class PlainTextTest {
  @ParameterizedTest
  @ValueSource(
      ints = {
        0x00, 0x07, 0x1B, 0x7F, 0x9B, 0x00AD, 0x061C, 0x200B, 0x200E, 0x2028, 0x202E, 0x2066,
        0x2069, 0xD800, 0xE000, 0xFEFF, 0xFFF9, 0xFFFF, 0x1D173, 0xE0001, 0xE0041, 0xE007F, 0xF0000,
        0x10FFFF
      })
  void aCharacterThatCouldDeceiveIsNotKept(int character) {
    assertFalse(PlainText.isPlain(character));
    String words = "left " + Character.toString(character) + "hand";
    assertFalse(PlainText.isPlain(words));
    assertFalse(PlainText.of(words).codePoints().anyMatch(c -> c == character));
    assertTrue(PlainText.isPlain(PlainText.of(words)));
  }

  @Test
  void tagLettersThatSpellAWordNobodySeesAreLeftOut() {
    String hidden = new StringBuilder("thumb").appendCodePoint(0xE0041).append('s').toString();
    assertEquals("thumbs", PlainText.of(hidden));
  }

  @ParameterizedTest
  @ValueSource(strings = {"Zoë", "手", "हिन्दी", "می‌خواهم", "👍🏽", "👩‍🦽", "½ hour — “no”"})
  void wordsInAnyLanguageAreKeptAsTheyAre(String words) {
    assertTrue(PlainText.isPlain(words));
    assertEquals(words, PlainText.of(words));
  }
}
