package closehand.screen.practice;

import closehand.measure.practice.Signal;
import closehand.screen.frame.Key;
import java.util.Locale;
import java.util.Optional;

/** What a key of the terminal is as the signal of an input. */
final class Signals {
  private Signals() {}

  /** The signal; nothing for what no input sends, and for the key kept for pausing. */
  static Optional<Signal> of(Key key) {
    if (key instanceof Key.Typed typed) {
      return Optional.of(Signal.key(typed.text()));
    }
    if (key instanceof Key.Unknown unknown) {
      return Optional.of(new Signal(Signal.Kind.UNKNOWN, unknown.code()));
    }
    if (key instanceof Key.Pointer pointer) {
      return pointer.doing() == Key.Pointer.Doing.PRESSED
          ? Optional.of(Signal.button(pointer.button()))
          : Optional.empty();
    }
    return key instanceof Key.Named named ? ofNamed(named) : Optional.empty();
  }

  private static Optional<Signal> ofNamed(Key.Named key) {
    if (key == Key.Named.BACKSPACE || key == Key.Named.INTERRUPT || key == Key.Named.REPAINT) {
      return Optional.empty();
    }
    return Optional.of(Signal.key(key == Key.Named.HELP ? "F1" : named(key)));
  }

  private static String named(Key.Named named) {
    String words = named.name().replace('_', ' ');
    return words.charAt(0) + words.substring(1).toLowerCase(Locale.ROOT);
  }
}
