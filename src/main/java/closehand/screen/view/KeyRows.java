package closehand.screen.view;

import closehand.screen.frame.CellText;
import java.util.ArrayList;
import java.util.List;

/**
 * Which keys are named at the foot, and in how many rows.
 *
 * <p>Help comes first in the last row, the key that stops beside it. Where both do not fit, only
 * the key that stops is named.
 *
 * @param last what stands in the last row
 * @param above what stands in the row above it; empty where one row is enough
 * @param more the word that something is hidden, at the end of the upper row; empty for none
 */
record KeyRows(List<Content.Hint> last, List<Content.Hint> above, String more) {
  /** Blanks between two keys. */
  static final int GAP = 2;

  private static final String MORE = "More below";
  private static final String MORE_SHORT = "More";

  /** Help, the key that stops, and the two keys that are enough for everything. */
  private static final int ENOUGH = 4;

  /** From this many rows on two of them may name keys. */
  private static final int TWO_FROM = 10;

  /** Below this many rows there is no room for keys. */
  private static final int ONE_FROM = 2;

  KeyRows {
    last = List.copyOf(last);
    above = List.copyOf(above);
  }

  /** How many rows name keys on a screen of this height, with so many columns for them. */
  static int count(List<Content.Hint> hints, int columns, int rows) {
    if (hints.isEmpty() || rows < ONE_FROM) {
      return 0;
    }
    return rows >= TWO_FROM && width(hints) + GAP + MORE.length() > columns ? 2 : 1;
  }

  /**
   * The keys that find room.
   *
   * @param below whether something is hidden
   */
  static KeyRows of(List<Content.Hint> hints, int columns, int count, boolean below) {
    List<Content.Hint> musts = musts(hints, columns);
    if (count < 2) {
      String more = below ? more(hints, musts, columns) : "";
      return new KeyRows(filled(musts, hints, columns - room(more)), List.of(), more);
    }
    List<Content.Hint> last = filled(musts, hints, columns);
    List<Content.Hint> rest = new ArrayList<>(hints);
    rest.removeAll(last);
    String more = below && MORE.length() <= columns ? MORE : "";
    return new KeyRows(last, filled(List.of(), rest, columns - room(more)), more);
  }

  /** Help and the keys that are always named; without help where they do not fit together. */
  private static List<Content.Hint> musts(List<Content.Hint> hints, int columns) {
    List<Content.Hint> musts = new ArrayList<>();
    for (int i = 0; i < hints.size(); i++) {
      if (i == 0 || hints.get(i).always()) {
        musts.add(hints.get(i));
      }
    }
    if (musts.size() > 1 && width(musts) > columns) {
      musts.remove(0);
    }
    return musts;
  }

  /** The musts and as many others as fit, in the order of the hints. */
  private static List<Content.Hint> filled(
      List<Content.Hint> musts, List<Content.Hint> hints, int columns) {
    List<Content.Hint> some = new ArrayList<>(musts);
    for (Content.Hint hint : hints) {
      List<Content.Hint> longer = new ArrayList<>(some);
      longer.add(hint);
      if (!some.contains(hint) && width(longer) <= columns) {
        some = longer;
      }
    }
    return some;
  }

  /** The short word where it makes room for the keys that are enough for everything. */
  private static String more(List<Content.Hint> hints, List<Content.Hint> musts, int columns) {
    List<Content.Hint> enough = hints.subList(0, Math.min(ENOUGH, hints.size()));
    for (List<Content.Hint> beside : List.of(enough, musts)) {
      for (String word : List.of(MORE, MORE_SHORT)) {
        if (width(beside) + GAP + word.length() <= columns) {
          return word;
        }
      }
    }
    return "";
  }

  private static int room(String more) {
    return more.isEmpty() ? 0 : GAP + more.length();
  }

  private static int width(List<Content.Hint> hints) {
    return hints.stream().mapToInt(h -> width(h) + GAP).sum() - (hints.isEmpty() ? 0 : GAP);
  }

  private static int width(Content.Hint hint) {
    return CellText.width(hint.key()) + 1 + CellText.width(hint.does());
  }
}
