package closehand.screen.frame;

import java.util.List;

/**
 * Presses a key as a person does: the number of a line that is not in sight only brings it into
 * sight, so it is pressed once more.
 */
public final class Pressed {
  private static final ScreenSize ROOMY = new ScreenSize(132, 43);

  private Pressed() {}

  /** Presses it, once or twice. */
  public static void on(Showing face, Key key, long millis, ScreenSize size) {
    List<String> before = page(face);
    face.frame(size);
    face.press(key, millis);
    boolean digit = key instanceof Key.Typed typed && typed.digit() >= 0;
    if (digit && page(face).equals(before)) {
      face.frame(size);
      face.press(key, millis);
    }
    face.frame(size);
  }

  /** What the page says, wherever its mark stands. */
  private static List<String> page(Showing face) {
    return face.frame(ROOMY).text().stream().map(row -> row.replace('>', ' ')).toList();
  }
}
