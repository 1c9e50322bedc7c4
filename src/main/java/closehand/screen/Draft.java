package closehand.screen;

import closehand.bank.FactType;
import closehand.interview.Wording;

/**
 * A line being typed.
 *
 * @param kind what may be typed
 * @param text what has been typed
 * @param figures how many figures the largest number has before the point; 0 for words
 * @param decimals figures after the point
 */
record Draft(Kind kind, String text, int figures, int decimals) {
  /** Longest line of words, in characters; the field itself may allow less. */
  private static final int LONGEST = 1000;

  enum Kind {
    WORDS,
    FIGURES,
    /** A passphrase: one sign stands for each character, which is kept elsewhere. */
    SECRET
  }

  static Draft words() {
    return new Draft(Kind.WORDS, "", 0, 0);
  }

  static Draft secret() {
    return new Draft(Kind.SECRET, "", 0, 0);
  }

  static Draft figures(FactType.Amount amount) {
    int figures = Wording.number(Math.floor(amount.maximum())).length();
    return new Draft(Kind.FIGURES, "", figures, amount.decimals());
  }

  Draft with(String next) {
    return new Draft(kind, next, figures, decimals);
  }

  boolean isEmpty() {
    return text.isEmpty();
  }

  /** The same with one more character; the same where it has no place. */
  Draft plus(String character) {
    if (kind == Kind.SECRET) {
      int count = character.codePointCount(0, character.length());
      return text.length() + count <= LONGEST ? with(text + "*".repeat(count)) : this;
    }
    if (kind == Kind.WORDS) {
      return text.length() + character.length() <= LONGEST ? with(text + character) : this;
    }
    if (character.equals(".") || character.equals(",")) {
      return decimals > 0 && !text.contains(".") && !isEmpty() ? with(text + ".") : this;
    }
    boolean figure = character.length() == 1 && Character.isDigit(character.charAt(0));
    if (!figure || isFull()) {
      return this;
    }
    boolean needsPoint = decimals > 0 && !text.contains(".") && text.length() >= figures;
    return with(text + (needsPoint ? "." : "") + character);
  }

  /** The same without its last character. */
  Draft minus() {
    return isEmpty() ? this : with(text.substring(0, text.offsetByCodePoints(text.length(), -1)));
  }

  /** Whether no further figure has a place. */
  boolean isFull() {
    int point = text.indexOf('.');
    return kind == Kind.FIGURES
        && (point < 0
            ? decimals == 0 && text.length() >= figures
            : text.length() - point - 1 >= decimals);
  }

  /** How many figures fill the line. */
  int width() {
    return figures + decimals;
  }
}
