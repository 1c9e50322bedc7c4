package closehand.screen.terminal;

import closehand.screen.frame.Key;
import java.util.Optional;

/**
 * Which keys the control sequences of terminals stand for.
 *
 * <p>Sequences: ECMA-48 (5th edition, 1991), section 5.4, as xterm and the Linux console use them.
 * A sequence with a modifier (Shift, Alt, Ctrl) stands for no key: no function here needs a chord.
 */
final class KeySequences {
  /** Starts a piece of pasted text; its end is {@link #PASTE_END}. */
  static final String PASTE_START = "200~";

  /** What ends pasted text. */
  static final String PASTE_END = "\u001b[201~";

  private KeySequences() {}

  /**
   * The key of a sequence that began with {@code ESC [}.
   *
   * @param rest what followed, parameters and final character
   */
  static Optional<Key> ofControl(String rest) {
    char last = rest.charAt(rest.length() - 1);
    String parameters = rest.substring(0, rest.length() - 1);
    if (parameters.startsWith("<") && (last == 'M' || last == 'm')) {
      return PointerReports.of(parameters.substring(1), last == 'm');
    }
    if (parameters.isEmpty() && (last == 'I' || last == 'O')) {
      return Optional.of(new Key.Focus(last == 'I'));
    }
    if (last == '~') {
      return numbered(withoutModifier(parameters));
    }
    boolean plain =
        parameters.isEmpty() || withoutModifier(parameters).equals("1") || parameters.equals("0");
    return plain ? lettered(last) : Optional.empty();
  }

  /** The first parameter when the modifier behind it says "none"; otherwise all of them. */
  private static String withoutModifier(String parameters) {
    return parameters.endsWith(";1")
        ? parameters.substring(0, parameters.length() - 2)
        : parameters;
  }

  private static Optional<Key> numbered(String number) {
    return switch (number) {
      case "1", "7" -> Optional.of(Key.Named.HOME);
      case "4", "8" -> Optional.of(Key.Named.END);
      case "3" -> Optional.of(Key.Named.DELETE);
      case "5" -> Optional.of(Key.Named.PAGE_UP);
      case "6" -> Optional.of(Key.Named.PAGE_DOWN);
      case "11" -> Optional.of(Key.Named.HELP);
      default -> Optional.empty();
    };
  }

  private static Optional<Key> lettered(char letter) {
    return switch (letter) {
      case 'A' -> Optional.of(Key.Named.UP);
      case 'B' -> Optional.of(Key.Named.DOWN);
      case 'C' -> Optional.of(Key.Named.RIGHT);
      case 'D' -> Optional.of(Key.Named.LEFT);
      case 'H' -> Optional.of(Key.Named.HOME);
      case 'F' -> Optional.of(Key.Named.END);
      case 'Z' -> Optional.of(Key.Named.TAB);
      case 'P' -> Optional.of(Key.Named.HELP);
      default -> Optional.empty();
    };
  }

  /** The key of {@code ESC O} and a character: cursor keys, F1 and the number pad. */
  static Optional<Key> ofSingleShift(char last) {
    if (last >= 'p' && last <= 'y') {
      return Optional.of(Key.of((char) ('0' + last - 'p')));
    }
    if (last >= 'j' && last <= 'o') {
      return Optional.of(Key.of("*+,-./".charAt(last - 'j')));
    }
    return switch (last) {
      case 'M' -> Optional.of(Key.Named.ENTER);
      case 'X' -> Optional.of(Key.of('='));
      case ' ' -> Optional.of(Key.Named.SPACE);
      case 'I' -> Optional.of(Key.Named.TAB);
      case 'Z' -> Optional.empty();
      default -> lettered(last);
    };
  }

  /** The key of {@code ESC [ [} and a letter, as the Linux console sends function keys. */
  static Optional<Key> ofConsole(char last) {
    return last == 'A' ? Optional.of(Key.Named.HELP) : Optional.empty();
  }

  /** The key of a control character below the blank. */
  static Optional<Key> ofControlCharacter(int control) {
    return switch (control) {
      case '\r', '\n' -> Optional.of(Key.Named.ENTER);
      case '\b', 0x7f -> Optional.of(Key.Named.BACKSPACE);
      case '\t' -> Optional.of(Key.Named.TAB);
      case KeyDecoder.INTERRUPT -> Optional.of(Key.Named.INTERRUPT);
      case '\f' -> Optional.of(Key.Named.REPAINT);
      default -> Optional.empty();
    };
  }
}
