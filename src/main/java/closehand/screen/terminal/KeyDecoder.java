package closehand.screen.terminal;

import closehand.screen.frame.Key;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Turns the characters a terminal sends into keys, one character at a time.
 *
 * <p>A sequence is swallowed to its end whether it is known or not, however slowly it arrives, so
 * that none of its characters can ever answer a question. Only Enter, Ctrl-C and other control
 * characters break a sequence off. No clock: the caller says when nothing more came.
 */
public final class KeyDecoder {
  /** How long to wait for the rest after an Escape, in milliseconds; from measurement. */
  public static final int SILENCE_MILLIS = 250;

  /** Ctrl-C. */
  static final int INTERRUPT = 3;

  /** The most characters kept of a paste; what follows is swallowed. */
  static final int MOST_PASTED = 20_000;

  private static final int MOST_SHOWN = 40;
  private static final int ESCAPE = 0x1b;
  private static final int BELL = 7;
  private static final int STRING_END = 0x9c;
  private static final int MOUSE_CHARACTERS = 3;

  private enum State {
    GROUND,
    ESCAPE,
    AFTER_ESCAPE,
    DESIGNATION,
    CONTROL,
    SINGLE_SHIFT,
    CONSOLE,
    MOUSE,
    STRING,
    STRING_ESCAPE,
    PASTE
  }

  private final StringBuilder sequence = new StringBuilder();
  private final StringBuilder pasted = new StringBuilder();
  private State state = State.GROUND;
  private int pasteEndSeen;
  private char highHalf;
  private List<Key> keys = new ArrayList<>();

  /** The keys that are complete with these characters. */
  public List<Key> feed(CharSequence characters) {
    for (int i = 0; i < characters.length(); i++) {
      char one = characters.charAt(i);
      if (Character.isHighSurrogate(one)) {
        highHalf = one;
      } else if (Character.isLowSurrogate(one)) {
        next(Character.toCodePoint(highHalf, one));
      } else {
        next(one);
      }
    }
    return taken();
  }

  /** The keys that are complete because nothing followed for {@link #SILENCE_MILLIS}. */
  public List<Key> silence() {
    if (state == State.ESCAPE) {
      keys.add(Key.Named.ESCAPE);
      state = State.AFTER_ESCAPE;
    } else if (state == State.DESIGNATION) {
      unknown();
    }
    return taken();
  }

  /** Whether {@link #silence} would tell something. */
  public boolean waiting() {
    return state == State.ESCAPE || state == State.DESIGNATION;
  }

  private List<Key> taken() {
    List<Key> complete = keys;
    keys = new ArrayList<>();
    return complete;
  }

  private void next(int point) {
    switch (state) {
      case GROUND -> ground(point);
      case ESCAPE -> escape(point);
      case AFTER_ESCAPE -> afterEscape(point);
      case PASTE -> paste(point);
      case STRING, STRING_ESCAPE -> string(point);
      default -> insideSequence(point);
    }
  }

  private void ground(int point) {
    if (point == ESCAPE) {
      begin(State.ESCAPE);
    } else if (point < ' ' || point == 0x7f) {
      control(point);
    } else if (point >= 0x80 && point < 0xa0) {
      eightBit(point);
    } else {
      keys.add(typed(point));
    }
  }

  private static Key typed(int point) {
    if (point == ' ' || point == 0xa0) {
      return Key.Named.SPACE;
    }
    return switch (Character.getType(point)) {
      case Character.CONTROL,
          Character.FORMAT,
          Character.SURROGATE,
          Character.PRIVATE_USE,
          Character.UNASSIGNED,
          Character.LINE_SEPARATOR,
          Character.PARAGRAPH_SEPARATOR ->
          new Key.Unknown(name(point));
      default ->
          point == 0xfffd
              ? new Key.Unknown("a character this terminal does not know")
              : new Key.Typed(Character.toString(point));
    };
  }

  private void control(int point) {
    Optional<Key> key = KeySequences.ofControlCharacter(point);
    keys.add(key.orElseGet(() -> new Key.Unknown(name(point))));
    state = State.GROUND;
  }

  /** The same introducers in their one-character form (ECMA-48, section 5.3). */
  private void eightBit(int point) {
    switch (point) {
      case 0x9b -> begin(State.CONTROL);
      case 0x8f -> begin(State.SINGLE_SHIFT);
      case 0x90, 0x98, 0x9d, 0x9e, 0x9f -> begin(State.STRING);
      default -> keys.add(new Key.Unknown(name(point)));
    }
  }

  private void begin(State next) {
    sequence.setLength(0);
    state = next;
  }

  private void escape(int point) {
    if (point == ESCAPE) {
      keys.add(Key.Named.ESCAPE);
    } else if (point == INTERRUPT) {
      control(point);
    } else {
      remember(point);
      switch (point) {
        case '[' -> state = State.CONTROL;
        case 'O' -> state = State.SINGLE_SHIFT;
        case ']', 'P', 'X', '^', '_' -> state = State.STRING;
        default -> {
          if (point >= ' ' && point < '0') {
            state = State.DESIGNATION;
          } else {
            unknown();
          }
        }
      }
    }
  }

  /** The rest of a sequence may come late, after its Escape was taken for the key. */
  private void afterEscape(int point) {
    if (point == '[' || point == 'O' || point == ']') {
      begin(State.ESCAPE);
      escape(point);
    } else {
      state = State.GROUND;
      ground(point);
    }
  }

  private void insideSequence(int point) {
    if (point == ESCAPE) {
      unknown();
      begin(State.ESCAPE);
    } else if (point < ' ') {
      unknown();
      control(point);
    } else {
      remember(point);
      switch (state) {
        case CONTROL -> controlSequence(point);
        case SINGLE_SHIFT -> singleShift(point);
        case CONSOLE -> finish(KeySequences.ofConsole(character(point)));
        case MOUSE -> {
          if (sequence.length() >= 2 + MOUSE_CHARACTERS) {
            unknown();
          }
        }
        default -> {
          if (point >= '0') {
            unknown();
          }
        }
      }
    }
  }

  private void controlSequence(int point) {
    String rest = sequence.substring(sequence.charAt(0) == '[' ? 1 : 0);
    if (rest.equals("[")) {
      state = State.CONSOLE;
    } else if (rest.equals("M")) {
      sequence.setLength(0);
      sequence.append("[M");
      state = State.MOUSE;
    } else if (rest.equals(KeySequences.PASTE_START)) {
      pasted.setLength(0);
      pasteEndSeen = 0;
      state = State.PASTE;
    } else if (point >= '@' && point <= '~') {
      finish(KeySequences.ofControl(rest));
    } else if (point > '~') {
      unknown();
    }
  }

  private void singleShift(int point) {
    boolean parameter = point >= '0' && point <= ';';
    if (!parameter) {
      boolean bare = sequence.length() <= (sequence.charAt(0) == 'O' ? 2 : 1);
      finish(bare ? KeySequences.ofSingleShift(character(point)) : Optional.empty());
    }
  }

  private void string(int point) {
    boolean ended =
        point == BELL || point == STRING_END || (state == State.STRING_ESCAPE && point == '\\');
    if (ended) {
      unknown();
    } else if (state == State.STRING_ESCAPE) {
      unknown();
      begin(State.ESCAPE);
      escape(point);
    } else if (point == ESCAPE) {
      state = State.STRING_ESCAPE;
    } else if (point < ' ') {
      unknown();
      control(point);
    } else {
      remember(point);
    }
  }

  private void paste(int point) {
    if (point == INTERRUPT) {
      endPaste();
      keys.add(Key.Named.INTERRUPT);
      return;
    }
    if (pasted.length() < MOST_PASTED) {
      pasted.appendCodePoint(point);
    }
    boolean goesOn = point == KeySequences.PASTE_END.charAt(pasteEndSeen);
    pasteEndSeen = goesOn ? pasteEndSeen + 1 : point == ESCAPE ? 1 : 0;
    if (pasteEndSeen == KeySequences.PASTE_END.length()) {
      endPaste();
    }
  }

  private void endPaste() {
    String text = pasted.toString();
    int end = text.lastIndexOf(ESCAPE);
    boolean marked = end >= 0 && KeySequences.PASTE_END.startsWith(text.substring(end));
    keys.add(new Key.Pasted(marked ? text.substring(0, end) : text));
    state = State.GROUND;
  }

  private void finish(Optional<Key> key) {
    if (key.isPresent()) {
      keys.add(key.get());
      state = State.GROUND;
    } else {
      unknown();
    }
  }

  private void unknown() {
    StringBuilder code = new StringBuilder("Escape");
    sequence.codePoints().forEach(p -> code.append(' ').append(name(p)));
    keys.add(new Key.Unknown(code.toString()));
    state = State.GROUND;
  }

  private void remember(int point) {
    if (sequence.length() < MOST_SHOWN) {
      sequence.appendCodePoint(point);
    }
  }

  private static char character(int point) {
    return point <= '~' ? (char) point : 0x7f;
  }

  private static String name(int point) {
    if (point < ' ') {
      return "Ctrl-" + (char) (point + '@');
    }
    return point <= '~' && point > ' ' ? Character.toString(point) : "code " + point;
  }
}
