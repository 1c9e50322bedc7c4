package closehand.report.practice;

import closehand.measure.practice.Signal;
import java.util.Map;
import java.util.Optional;

/**
 * What an input should send in a terminal, from its USB HID usage (HID Usage Tables of the USB
 * Implementers' Forum: page 07 keyboard, 09 buttons). Keys that terminals send as sequences of
 * their own are left open.
 */
final class ExpectedSignals {
  private static final int FIRST_LETTER = 0x04;
  private static final int LAST_LETTER = 0x1d;
  private static final int FIRST_DIGIT = 0x1e;
  private static final int LAST_DIGIT = 0x27;
  private static final Map<Integer, String> OTHERS =
      Map.of(0x28, "Enter", 0x2b, "Tab", 0x2c, "Space", 0x2d, "-", 0x2e, "=");

  /** Terminals number mouse buttons another way: the wheel is 2, the side buttons 8 and 9. */
  private static final Map<Integer, Integer> BUTTONS = Map.of(1, 1, 2, 3, 3, 2, 4, 8, 5, 9);

  private ExpectedSignals() {}

  /**
   * The signal of a usage.
   *
   * @param usage page and usage in hexadecimal, such as {@code 07:1e}; empty where there is none
   */
  static Optional<Signal> of(String usage) {
    if (!usage.matches("0[79]:[0-9a-f]{2}")) {
      return Optional.empty();
    }
    int number = Integer.parseInt(usage.substring(3), 16);
    return usage.startsWith("07")
        ? key(number)
        : Optional.ofNullable(BUTTONS.get(number)).map(Signal::button);
  }

  private static Optional<Signal> key(int number) {
    if (number >= FIRST_LETTER && number <= LAST_LETTER) {
      return Optional.of(Signal.key(Character.toString('a' + number - FIRST_LETTER)));
    }
    if (number >= FIRST_DIGIT && number <= LAST_DIGIT) {
      return Optional.of(Signal.key(Integer.toString((number - FIRST_DIGIT + 1) % 10)));
    }
    return Optional.ofNullable(OTHERS.get(number)).map(Signal::key);
  }
}
