package closehand.screen.frame;

import java.util.Set;

/**
 * What stands on the screen and takes the keys. The terminal asks for a frame after every key, so
 * nothing is ever painted without a reason.
 */
public interface Showing {
  /** What is to be seen on a screen of this size. */
  Frame frame(ScreenSize size);

  /** Takes a key; whatever must be kept is kept before this returns. */
  void press(Key key);

  /**
   * Takes a key with the moment it arrived; the same as {@link #press(Key)} where time does not
   * matter.
   *
   * @param millis on a clock that only goes forward
   */
  default void press(Key key, long millis) {
    press(key);
  }

  /**
   * How long until something is due by itself, in milliseconds; below 0 where nothing is. {@link
   * Key.Passed} arrives then.
   *
   * @param millis now, on the same clock
   */
  default long waitMillis(long millis) {
    return -1;
  }

  /** Takes in what came up beside the keys, such as a save that failed. */
  default void noted() {}

  /** What the terminal is to tell besides keys. */
  default Set<Report> reports() {
    return Set.of();
  }

  /** What a terminal can tell besides keys. */
  enum Report {
    /** Every movement and button of the mouse, in cells. */
    POINTER,
    /** That another window was chosen. */
    FOCUS
  }

  /** Whether the screen may close. */
  boolean over();

  /**
   * Whether something waits to be done that takes its time. The frame says so; it is painted before
   * {@link #work}, and no key is taken until that is done.
   */
  default boolean busy() {
    return false;
  }

  /** Does what waits to be done. */
  default void work() {}

  /** How long keys are ignored after others here. */
  default Guards guards() {
    return Guards.USUAL;
  }

  /**
   * Whether the same key may come again at once here, because it moves or writes and answers
   * nothing. Keys that may not are guarded against being held down.
   */
  default boolean repeats(Key key) {
    return !(key instanceof Key.Typed)
        && key != Key.Named.ENTER
        && key != Key.Named.BACKSPACE
        && key != Key.Named.DELETE
        && key != Key.Named.ESCAPE;
  }
}
