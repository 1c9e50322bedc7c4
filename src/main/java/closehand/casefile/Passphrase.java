package closehand.casefile;

import java.security.SecureRandom;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/**
 * Passphrases: six made-up words that the program draws, or one of somebody's own.
 *
 * <p>The words are put together from syllables, so they mean nothing in any language we know, are
 * easy to type with one finger and to read out over the telephone.
 */
public final class Passphrase {
  /** The shortest passphrase of one's own, in characters (common practice, no source). */
  public static final int SHORTEST = 14;

  private static final int WORDS = 6;

  /** Made-up words that mean something after all, or sound as if they did. */
  private static final Set<String> NOT_THESE =
      Set.of(
          "moron", "retar", "demon", "dimon", "devil", "hivon", "hivel", "hivar", "hivim", "hivok",
          "semon", "nabob", "saton", "sadim", "sadon", "homon", "homel", "homar", "homok", "homim",
          "faton", "fatel", "fatar", "fatim", "fatok", "titon", "titel", "titar", "titim", "titok");

  private static final List<String> LIST = list();

  private Passphrase() {}

  private static List<String> list() {
    List<String> words = new ArrayList<>();
    for (String first : "b d f g h k l m n p r s t v w z".split(" ")) {
      for (String vowel : "a e i o".split(" ")) {
        for (String second : "b d f h l m n r s t v w".split(" ")) {
          for (String end : "on el ar im ok".split(" ")) {
            String word = first + vowel + second + end;
            if (!NOT_THESE.contains(word)) {
              words.add(word);
            }
          }
        }
      }
    }
    return List.copyOf(words);
  }

  /** All words that can be drawn, each different. */
  static List<String> words() {
    return LIST;
  }

  /** Six words by chance, one space between them. */
  public static String draw(SecureRandom random) {
    List<String> drawn = new ArrayList<>();
    for (int i = 0; i < WORDS; i++) {
      drawn.add(LIST.get(random.nextInt(LIST.size())));
    }
    return String.join(" ", drawn);
  }

  /** A passphrase as it is used: without spaces around it, one space between words. */
  public static char[] kept(char[] typed) {
    StringBuilder kept = new StringBuilder();
    for (char c : typed) {
      boolean space = c == ' ' || c == '\t';
      if (!space || (kept.length() > 0 && kept.charAt(kept.length() - 1) != ' ')) {
        kept.append(space ? ' ' : c);
      }
    }
    int end = kept.length();
    if (end > 0 && kept.charAt(end - 1) == ' ') {
      end--;
    }
    char[] result = new char[end];
    kept.getChars(0, end, result, 0);
    for (int i = 0; i < kept.length(); i++) {
      kept.setCharAt(i, ' ');
    }
    return result;
  }

  /** Whether a passphrase of somebody's own is long enough. */
  public static boolean isLongEnough(char[] kept) {
    return kept.length >= SHORTEST;
  }
}
