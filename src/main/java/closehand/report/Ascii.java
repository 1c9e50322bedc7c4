package closehand.report;

import java.text.Normalizer;

/** Other ways of writing a character, with the letters and signs of ASCII only. */
final class Ascii {
  private Ascii() {}

  /**
   * The character in ASCII: letters lose their marks, signs become the nearest words or signs, and
   * what has no such form becomes "?".
   *
   * @param point a code point above {@code ~}
   */
  static String of(int point) {
    String sign = sign(point);
    return sign.isEmpty() ? withoutMarks(point) : sign;
  }

  private static String sign(int point) {
    return switch (point) {
      case '\u2018', '\u2019', '\u201a', '\u2032' -> "'";
      case '\u201c', '\u201d', '\u201e', '\u00ab', '\u00bb', '\u2033' -> "\"";
      case '\u2010', '\u2011', '\u2012', '\u2013', '\u2014', '\u2015', '\u2212' -> "-";
      case '\u2022', '\u00b7' -> "-";
      case '\u00d7' -> "x";
      case '\u00f7', '\u2044' -> "/";
      case '\u00b1' -> "+/-";
      case '\u2264' -> "<=";
      case '\u2265' -> ">=";
      case '\u2192' -> "->";
      case '\u2190' -> "<-";
      case '\u00b0' -> " degrees";
      case '\u00b5', '\u03bc' -> "u";
      case '\u20ac' -> "EUR";
      case '\u00a3' -> "GBP";
      default -> letter(point);
    };
  }

  private static String letter(int point) {
    return switch (point) {
      case '\u00df' -> "ss";
      case '\u00e6' -> "ae";
      case '\u00c6' -> "AE";
      case '\u0153' -> "oe";
      case '\u0152' -> "OE";
      case '\u00f8' -> "o";
      case '\u00d8' -> "O";
      case '\u0142' -> "l";
      case '\u0141' -> "L";
      case '\u0111', '\u00f0' -> "d";
      case '\u0110', '\u00d0' -> "D";
      case '\u00fe' -> "th";
      case '\u00de' -> "Th";
      case '\u0131' -> "i";
      default -> "";
    };
  }

  /** What compatibility decomposition (Unicode Standard Annex 15) leaves in ASCII. */
  private static String withoutMarks(int point) {
    String apart = Normalizer.normalize(Character.toString(point), Normalizer.Form.NFKD);
    StringBuilder kept = new StringBuilder(apart.length());
    for (int i = 0; i < apart.length(); i++) {
      char one = apart.charAt(i);
      if (one >= ' ' && one <= '~') {
        kept.append(one);
      } else if (one == '\u2044') {
        kept.append('/');
      }
    }
    return kept.isEmpty() ? "?" : kept.toString();
  }
}
