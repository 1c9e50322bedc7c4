package closehand.interview;

/**
 * Words as they are kept: one line, without characters that could take over a screen or hide in a
 * file.
 *
 * <p>Whatever reads a saved case refuses the same characters, so nothing that passes here is lost.
 */
public final class PlainText {
  private static final int JOINER = 0x200D;
  private static final int NON_JOINER = 0x200C;
  private static final int UNREADABLE = 0xFFFD;

  private PlainText() {}

  /** Whether these words can be kept as they are. */
  public static boolean isPlain(String words) {
    return words.codePoints().allMatch(c -> isPlain(c));
  }

  /**
   * The words as they can be kept: line ends, tabs and other controls become spaces, marks that
   * cannot be seen are left out, what has no meaning becomes the replacement character, the ends
   * are trimmed.
   */
  public static String of(String words) {
    StringBuilder plain = new StringBuilder(words.length());
    words.codePoints().forEach(c -> append(plain, c));
    return plain.toString().strip();
  }

  private static void append(StringBuilder plain, int c) {
    if (isPlain(c)) {
      plain.appendCodePoint(c);
      return;
    }
    switch (Character.getType(c)) {
      case Character.CONTROL, Character.LINE_SEPARATOR, Character.PARAGRAPH_SEPARATOR ->
          plain.append(' ');
      case Character.FORMAT -> {}
      default -> plain.appendCodePoint(UNREADABLE);
    }
  }

  /** Whether this character can be kept as it is. */
  public static boolean isPlain(int c) {
    if (c >= ' ' && c < 0x7F) {
      return true;
    }
    // The last two of every plane, and a block in the first, are promised never to be characters.
    boolean nonCharacter = (c & 0xFFFE) == 0xFFFE || (c >= 0xFDD0 && c <= 0xFDEF);
    return !nonCharacter
        && switch (Character.getType(c)) {
          case Character.CONTROL, Character.SURROGATE, Character.PRIVATE_USE -> false;
          case Character.LINE_SEPARATOR, Character.PARAGRAPH_SEPARATOR -> false;
          case Character.FORMAT -> c == JOINER || c == NON_JOINER;
          default -> true;
        };
  }
}
