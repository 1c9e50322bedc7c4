package closehand.screen.view;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import closehand.report.Glyphs;
import closehand.screen.frame.CellText;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Somebody's own words may be written in characters that take two cells each. */
class WideWordsTest {
  /** Twelve wide characters, a Latin word, a letter with two marks, and wide ones again. */
  private static final String WORDS =
      "\u624b\u6307\u3068\u8155\u3067\u30b2\u30fc\u30e0\u3092\u3059\u308b\u3002 chess"
          + " x\u0301\u0302y \ud55c\uad6d\uc5b4\ub85c \u904a\u3076";

  @Test
  void noCharacterFallsOverTheEdgeAtAnyWidth() {
    List<Block> blocks =
        List.of(
            Block.plain(WORDS),
            new Block.Item("1", WORDS, "(chosen)"),
            new Block.Field("Words: ", WORDS),
            Block.laid("    " + WORDS, closehand.screen.frame.Role.PLAIN));
    for (int columns = 4; columns <= 90; columns++) {
      StringBuilder all = new StringBuilder();
      for (Line line : Body.lines(blocks, columns, Glyphs.UNICODE, false)) {
        int mark = line.stop() == Line.NO_STOP ? 0 : Body.MARK;
        int width = mark + CellText.width(line.lead()) + CellText.width(line.text());
        assertTrue(width <= columns || columns < 6, columns + ": " + line);
        all.append(line.text());
      }
      String none = bare(WORDS);
      assertEquals(none + none + "(chosen)" + "Words:" + none + "_" + none, bare(all.toString()));
    }
  }

  private static String bare(String text) {
    return java.text.Normalizer.normalize(text.replace(" ", ""), java.text.Normalizer.Form.NFC);
  }
}
