package closehand.measure.practice;

import java.util.Optional;

/**
 * What arrives when an input is pressed.
 *
 * @param kind a key with a name, a key nobody has a name for, or a mouse button
 * @param name the character or name of the key, or the number of the button
 */
public record Signal(Kind kind, String name) {
  /** What kind of thing arrived. */
  public enum Kind {
    KEY("key"),
    UNKNOWN("unknown"),
    BUTTON("button");

    private final String code;

    Kind(String code) {
      this.code = code;
    }
  }

  /** A key that types a character, or has a name such as {@code Enter}. */
  public static Signal key(String name) {
    return new Signal(Kind.KEY, name);
  }

  /** A mouse button by its number, 1 for the main one. */
  public static Signal button(int number) {
    return new Signal(Kind.BUTTON, Integer.toString(number));
  }

  /** For files: {@code key:7}, {@code unknown:Escape [ 3 4 ~}, {@code button:1}. */
  public String code() {
    return kind.code + ":" + name;
  }

  /** The signal with this code; nothing where it is none. */
  public static Optional<Signal> of(String code) {
    for (Kind kind : Kind.values()) {
      String start = kind.code + ":";
      if (code.startsWith(start) && code.length() > start.length()) {
        return Optional.of(new Signal(kind, code.substring(start.length())));
      }
    }
    return Optional.empty();
  }

  /** In plain words. */
  public String words() {
    return switch (kind) {
      case KEY -> "the key " + name;
      case UNKNOWN -> "a key this program has no name for (" + name + ")";
      case BUTTON -> "mouse button " + name;
    };
  }
}
