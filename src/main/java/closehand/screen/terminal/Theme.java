package closehand.screen.terminal;

import closehand.screen.frame.Role;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** How roles look. No theme dims or blinks anything, and none carries meaning of its own. */
public enum Theme {
  /** The terminal's own colours with bold, reverse and underline; the usual one. */
  PLAIN {
    @Override
    Look look(Role role) {
      return switch (role) {
        case PLAIN, QUIET -> Look.NONE;
        case STRONG, MARK, WARNING, KEY -> Look.BOLD;
        case CHOSEN, BAR -> Look.REVERSE;
        case FIELD -> Look.UNDERLINE;
      };
    }
  },
  /** Colours of its own, every pair 7 to 1 or better. */
  CONTRAST {
    @Override
    Look look(Role role) {
      return switch (role) {
        case PLAIN, QUIET -> Look.of(WHITE, BLACK, false);
        case STRONG -> Look.of(WHITE, BLACK, true);
        case CHOSEN -> Look.of(BLACK, YELLOW, true);
        case MARK -> Look.of(YELLOW, BLACK, true);
        case WARNING -> Look.of(WHITE, DARK_RED, true);
        case KEY -> Look.of(CYAN, BLACK, true);
        case FIELD -> Look.of(BLACK, WHITE, false);
        case BAR -> Look.of(WHITE, DARK_BLUE, true);
      };
    }
  },
  /** Nothing but characters: marks and words carry everything. */
  MONO {
    @Override
    Look look(Role role) {
      return Look.NONE;
    }
  };

  private static final int BLACK = 16;
  private static final int WHITE = 231;
  private static final int YELLOW = 226;
  private static final int CYAN = 51;
  private static final int DARK_RED = 52;
  private static final int DARK_BLUE = 17;

  abstract Look look(Role role);

  /** The theme of a name such as {@code contrast}; nothing for a name there is not. */
  public static Optional<Theme> named(String name) {
    for (Theme theme : values()) {
      if (theme.name().toLowerCase(Locale.ROOT).equals(name.strip().toLowerCase(Locale.ROOT))) {
        return Optional.of(theme);
      }
    }
    return Optional.empty();
  }

  /**
   * The theme to use: the one asked for by name, without colours where none are wanted.
   *
   * @param asked the name given on the command line, empty for none
   * @param noColour whether {@code --no-color} was given
   * @param environment where {@code CLOSEHAND_THEME} may name one, and {@code NO_COLOR}, unless
   *     empty, asks for no colours
   * @return nothing for a name there is not
   */
  public static Optional<Theme> chosen(
      Optional<String> asked, boolean noColour, Map<String, String> environment) {
    String name = asked.orElseGet(() -> environment.getOrDefault("CLOSEHAND_THEME", ""));
    boolean none = noColour || !environment.getOrDefault("NO_COLOR", "").isEmpty();
    Optional<Theme> theme = name.isBlank() ? Optional.of(PLAIN) : named(name);
    return theme.map(t -> none && t == CONTRAST ? PLAIN : t);
  }
}
