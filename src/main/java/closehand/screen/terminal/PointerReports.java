package closehand.screen.terminal;

import closehand.screen.frame.Key;
import closehand.screen.frame.Key.Pointer.Doing;
import java.util.Optional;

/**
 * What a terminal tells of the mouse: button, column and row as numbers (xterm control sequences,
 * "SGR" form 1006). Modifier keys held with it are passed over.
 */
final class PointerReports {
  private static final int MOVES = 32;
  private static final int WHEEL = 64;
  private static final int SIDE = 128;
  private static final int NO_BUTTON = 3;
  private static final int FIRST_WHEEL = 4;
  private static final int FIRST_SIDE = 8;

  private PointerReports() {}

  /**
   * The report with these numbers.
   *
   * @param numbers button code, column, row; the last two count from 1
   * @param released whether a button was let go
   */
  static Optional<Key> of(String numbers, boolean released) {
    if (!numbers.matches("[0-9]{1,3};[0-9]{1,4};[0-9]{1,4}")) {
      return Optional.empty();
    }
    String[] parts = numbers.split(";", -1);
    int code = Integer.parseInt(parts[0]);
    int column = Integer.parseInt(parts[1]) - 1;
    int row = Integer.parseInt(parts[2]) - 1;
    boolean moved = (code & MOVES) != 0;
    Doing doing = moved ? Doing.MOVED : released ? Doing.RELEASED : Doing.PRESSED;
    return column < 0 || row < 0
        ? Optional.empty()
        : Optional.of(new Key.Pointer(doing, button(code), column, row));
  }

  private static int button(int code) {
    int low = code & NO_BUTTON;
    if ((code & SIDE) != 0) {
      return FIRST_SIDE + low;
    }
    if ((code & WHEEL) != 0) {
      return FIRST_WHEEL + low;
    }
    return low == NO_BUTTON ? 0 : low + 1;
  }
}
