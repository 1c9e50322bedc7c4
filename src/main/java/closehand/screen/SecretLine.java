package closehand.screen;

import java.util.Arrays;

/**
 * A passphrase while it is typed. It is kept nowhere else, never shown, and overwritten as soon as
 * it was used or given up.
 */
final class SecretLine {
  private char[] typed = new char[64];
  private int length;

  /** Adds what was typed. */
  void type(String characters) {
    if (length + characters.length() > typed.length) {
      char[] longer = Arrays.copyOf(typed, 2 * (length + characters.length()));
      Arrays.fill(typed, ' ');
      typed = longer;
    }
    characters.getChars(0, characters.length(), typed, length);
    length += characters.length();
  }

  /** Takes the last character back. */
  void takeBack() {
    int before = length;
    if (length > 0) {
      length -=
          length > 1 && Character.isSurrogatePair(typed[length - 2], typed[length - 1]) ? 2 : 1;
    }
    Arrays.fill(typed, length, before, ' ');
  }

  /** What was typed, which whoever takes it overwrites; nothing is left here. */
  char[] take() {
    char[] taken = Arrays.copyOf(typed, length);
    forget();
    return taken;
  }

  /** Overwrites it. */
  void forget() {
    Arrays.fill(typed, ' ');
    length = 0;
  }
}
