package closehand.screen.terminal;

import java.util.Optional;

/**
 * How a cell looks.
 *
 * @param colours both colours, or none: a foreground without its background may vanish on somebody
 *     else's screen
 * @param bold heavier
 * @param reverse foreground and background exchanged
 * @param underline a line below
 */
record Look(Optional<Colours> colours, boolean bold, boolean reverse, boolean underline) {
  /** Text as the terminal shows it. */
  static final Look NONE = new Look(Optional.empty(), false, false, false);

  /** Heavier text. */
  static final Look BOLD = new Look(Optional.empty(), true, false, false);

  /** Foreground and background exchanged. */
  static final Look REVERSE = new Look(Optional.empty(), false, true, false);

  /** A line below. */
  static final Look UNDERLINE = new Look(Optional.empty(), false, false, true);

  static Look of(int foreground, int background, boolean bold) {
    return new Look(Optional.of(new Colours(foreground, background)), bold, false, false);
  }
}
