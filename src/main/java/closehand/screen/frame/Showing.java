package closehand.screen.frame;

/**
 * What stands on the screen and takes the keys. The terminal asks for a frame after every key, so
 * nothing is ever painted without a reason.
 */
public interface Showing {
  /** What is to be seen on a screen of this size. */
  Frame frame(ScreenSize size);

  /** Takes a key; whatever must be kept is kept before this returns. */
  void press(Key key);

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
