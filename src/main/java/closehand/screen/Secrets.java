package closehand.screen;

import java.util.Arrays;
import java.util.function.Consumer;

/** The passphrase being typed, and the one it is to be the same as; both overwritten after use. */
final class Secrets {
  private final SecretLine line = new SecretLine();
  private char[] before = new char[0];

  /** The one being typed. */
  SecretLine line() {
    return line;
  }

  /** Hands over what was typed, and overwrites it afterwards whatever happens. */
  void using(Consumer<char[]> use) {
    char[] typed = line.take();
    try {
      use.accept(typed);
    } finally {
      Arrays.fill(typed, ' ');
    }
  }

  /** Keeps it until it was typed once more. */
  void remember(char[] typed) {
    Arrays.fill(before, ' ');
    before = typed.clone();
  }

  /** Whether this is the one that was remembered, which is forgotten. */
  boolean sameAsBefore(char[] typed) {
    boolean same = Arrays.equals(before, typed);
    Arrays.fill(before, ' ');
    before = new char[0];
    return same;
  }

  /** Overwrites both. */
  void forget() {
    line.forget();
    Arrays.fill(before, ' ');
    before = new char[0];
  }
}
