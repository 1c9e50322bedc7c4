package closehand.screen.frame;

/**
 * What came from the keyboard or the terminal, one at a time.
 *
 * <p>Digits of the number pad and of the number row are the same. Nothing here is a chord except
 * {@link Named#INTERRUPT}, which every terminal user expects.
 */
public sealed interface Key {
  /**
   * A character that prints, other than a blank.
   *
   * @param text one character with its marks
   */
  record Typed(String text) implements Key {
    /** Checks that something was typed; nothing at all is a caller's bug. */
    public Typed {
      if (text.isEmpty()) {
        throw new IllegalArgumentException("nothing was typed");
      }
    }

    /** The digit, or -1 when it is none of 0 to 9. */
    public int digit() {
      boolean one = text.length() == 1 && text.charAt(0) >= '0' && text.charAt(0) <= '9';
      return one ? text.charAt(0) - '0' : -1;
    }
  }

  /** Keys with a name. */
  enum Named implements Key {
    /** Enter, also that of the number pad. */
    ENTER,
    /** The space bar; a blank where text is typed. */
    SPACE,
    /** Takes back. */
    BACKSPACE,
    /** Removes what stands at the cursor, where text is typed. */
    DELETE,
    /** Cursor key up. */
    UP,
    /** Cursor key down. */
    DOWN,
    /** Cursor key left. */
    LEFT,
    /** Cursor key right. */
    RIGHT,
    /** A screen up. */
    PAGE_UP,
    /** A screen down. */
    PAGE_DOWN,
    /** To the start. */
    HOME,
    /** To the end. */
    END,
    /** Escape; never the only way to do anything, since it arrives late on slow lines. */
    ESCAPE,
    /** Tab, with or without Shift. */
    TAB,
    /** F1, which asks for help in many programs. */
    HELP,
    /** Ctrl-C: asks whether to leave. */
    INTERRUPT,
    /** Ctrl-L: paints everything afresh, which the terminal does by itself. */
    REPAINT
  }

  /**
   * The window has another size.
   *
   * @param size the size it has now
   */
  record Resized(ScreenSize size) implements Key {}

  /**
   * Text that came in one piece from the clipboard; it never answers a question.
   *
   * @param text what was pasted, as it came
   */
  record Pasted(String text) implements Key {}

  /**
   * A key this program has no name for; it may be shown, never taken for a command.
   *
   * @param code what arrived, in printable characters, such as {@code Escape [ 3 4 ~}
   */
  record Unknown(String code) implements Key {}

  /** Keys that were dropped, and why; told once for each time. */
  record Dropped(Why why) implements Key {
    /** Why keys do not count. */
    public enum Why {
      /** The same key was held down. */
      HELD,
      /** Keys followed one another too fast. */
      BOUNCED,
      /** They came while something took its time, so nobody could see what they would do. */
      MEANWHILE
    }
  }

  /**
   * A mouse, or whatever moves the pointer; only where it was asked for.
   *
   * @param doing what it did
   * @param button 1 main, 2 wheel click, 3 second, 4 and 5 wheel up and down, 6 and 7 tilt, 8 and 9
   *     at the side; 0 where it only moved
   * @param column cell under the pointer, counted from 0
   * @param row counted from 0
   */
  record Pointer(Doing doing, int button, int column, int row) implements Key {
    /** What a pointer does. */
    public enum Doing {
      PRESSED,
      RELEASED,
      MOVED
    }
  }

  /**
   * Another window was chosen, or this one again; only where it was asked for.
   *
   * @param here whether what is typed arrives here
   */
  record Focus(boolean here) implements Key {}

  /** So much time has passed that something is due; only where somebody waits. */
  record Passed() implements Key {}

  /** The terminal is gone; no key will follow. */
  record Closed() implements Key {}

  /** A typed character; a blank becomes the space bar. */
  static Key of(char typed) {
    return typed == ' ' ? Named.SPACE : new Typed(String.valueOf(typed));
  }
}
