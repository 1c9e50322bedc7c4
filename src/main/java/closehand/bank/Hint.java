package closehand.bank;

import java.util.Collection;
import java.util.Comparator;
import java.util.Optional;

/** Finds the word somebody probably meant. */
public final class Hint {
  private Hint() {}

  /**
   * "Did you mean ...?" for the nearest known word, or an empty text when none is near. Near means
   * an edit distance with neighbouring swaps (Damerau 1964, restricted form) of at most 2 or a
   * third of the word, whichever is more, and of at most half of a short word.
   */
  public static String didYouMean(String word, Collection<String> known) {
    return nearest(word, known).map(w -> "Did you mean \"" + w + "\"?").orElse("");
  }

  /** The nearest known word, if any is near. */
  public static Optional<String> nearest(String word, Collection<String> known) {
    int limit = Math.min(Math.max(2, word.length() / 3), word.length() / 2);
    return known.stream()
        .filter(w -> !w.isEmpty() && !w.equals(word))
        .filter(w -> Math.abs(w.length() - word.length()) <= limit)
        .filter(w -> distance(word, w) <= limit)
        .min(Comparator.<String>comparingInt(w -> distance(word, w)).thenComparing(w -> w));
  }

  static int distance(String a, String b) {
    int[][] d = new int[a.length() + 1][b.length() + 1];
    for (int i = 0; i <= a.length(); i++) {
      d[i][0] = i;
    }
    for (int j = 0; j <= b.length(); j++) {
      d[0][j] = j;
    }
    for (int i = 1; i <= a.length(); i++) {
      for (int j = 1; j <= b.length(); j++) {
        int change = a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1;
        d[i][j] = Math.min(Math.min(d[i - 1][j] + 1, d[i][j - 1] + 1), d[i - 1][j - 1] + change);
        boolean swap =
            i > 1
                && j > 1
                && a.charAt(i - 1) == b.charAt(j - 2)
                && a.charAt(i - 2) == b.charAt(j - 1);
        if (swap) {
          d[i][j] = Math.min(d[i][j], d[i - 2][j - 2] + 1);
        }
      }
    }
    return d[a.length()][b.length()];
  }
}
