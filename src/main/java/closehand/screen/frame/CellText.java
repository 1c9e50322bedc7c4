package closehand.screen.frame;

import java.util.ArrayList;
import java.util.List;

/**
 * How text falls into cells: which characters belong together, and how many cells they take.
 *
 * <p>Wide characters are those of Unicode Standard Annex 11, property values W and F, in the ranges
 * that writing systems use. From memory; terminals differ in rare characters.
 */
public final class CellText {
  private static final int ASCII_END = 0x7f;

  /** Nearly all there is to show, so that each piece need not be cut out anew. */
  private static final String[] SINGLE = new String[ASCII_END];

  static {
    for (int i = 0; i < ASCII_END; i++) {
      SINGLE[i] = String.valueOf((char) i);
    }
  }

  private CellText() {}

  /** The text in pieces of one base character with the marks that sit on it. */
  public static List<String> clusters(String text) {
    List<String> clusters = new ArrayList<>(text.length());
    if (isAscii(text)) {
      for (int i = 0; i < text.length(); i++) {
        clusters.add(SINGLE[text.charAt(i)]);
      }
      return clusters;
    }
    int start = 0;
    for (int i = 0; i < text.length(); ) {
      int point = text.codePointAt(i);
      if (i > start && widthOf(point) > 0) {
        clusters.add(text.substring(start, i));
        start = i;
      }
      i += Character.charCount(point);
    }
    if (start < text.length()) {
      clusters.add(text.substring(start));
    }
    return clusters;
  }

  /** How many cells the whole text takes. */
  public static int width(String text) {
    if (isAscii(text)) {
      return text.length();
    }
    int width = 0;
    for (String cluster : clusters(text)) {
      width += Math.max(1, widthOf(cluster.codePointAt(0)));
    }
    return width;
  }

  private static boolean isAscii(String text) {
    for (int i = 0; i < text.length(); i++) {
      if (text.charAt(i) >= ASCII_END) {
        return false;
      }
    }
    return true;
  }

  private static int widthOf(int point) {
    int type = Character.getType(point);
    if (type == Character.NON_SPACING_MARK
        || type == Character.ENCLOSING_MARK
        || type == Character.FORMAT) {
      return 0;
    }
    return isWide(point) ? 2 : 1;
  }

  private static boolean isWide(int point) {
    return point >= 0x1100
        && (point <= 0x115F
            || between(point, 0x2E80, 0x303E)
            || between(point, 0x3041, 0xA4CF)
            || between(point, 0xAC00, 0xD7A3)
            || between(point, 0xF900, 0xFAFF)
            || between(point, 0xFE30, 0xFE6F)
            || between(point, 0xFF00, 0xFF60)
            || between(point, 0xFFE0, 0xFFE6)
            || between(point, 0x1F300, 0x1FAFF)
            || between(point, 0x20000, 0x3FFFD));
  }

  private static boolean between(int point, int first, int last) {
    return point >= first && point <= last;
  }
}
