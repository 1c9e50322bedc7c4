package closehand.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Locale;

/** What holds for every page, whatever is on it. */
final class PageShape {
  /** Words that do not belong on a page for the player. */
  private static final List<String> UNWANTED =
      List.of(
          "suffer",
          "victim",
          "fail",
          "deficit",
          "abnormal",
          "wheelchair-bound",
          "able-bodied",
          "spastic",
          "compliant",
          "diagnos",
          "prescrib",
          "guarantee",
          "cure",
          "brave",
          "crutch",
          "is safe",
          "are safe",
          "push through");

  private PageShape() {}

  static void check(String page, Glyphs glyphs) {
    assertTrue(page.endsWith("\n"));
    for (String line : page.lines().toList()) {
      assertTrue(line.codePointCount(0, line.length()) <= Wrap.WIDTH, line);
      assertEquals(line.stripTrailing(), line);
    }
    assertFalse(page.contains("\n\n\n"), "two empty lines together");
    if (glyphs == Glyphs.ASCII) {
      page.chars().forEach(c -> assertTrue(c == '\n' || (c >= ' ' && c <= '~'), page));
    }
  }

  static void isKind(String page) {
    String words = page.toLowerCase(Locale.ROOT);
    UNWANTED.forEach(word -> assertFalse(words.contains(word), word));
  }
}
