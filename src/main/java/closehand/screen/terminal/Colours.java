package closehand.screen.terminal;

/**
 * A foreground with its background, as numbers of the 256-colour palette from 16 up, which have
 * fixed values where the first sixteen are each user's own.
 *
 * @param foreground 16 to 255
 * @param background 16 to 255
 */
record Colours(int foreground, int background) {
  private static final int CUBE = 16;
  private static final int GREYS = 232;

  Colours {
    if (foreground < CUBE || foreground > 255 || background < CUBE || background > 255) {
      throw new IllegalArgumentException("only colours 16 to 255 have fixed values");
    }
  }

  /** How far the two stand apart, 1 to 21 (WCAG 2.2, definition of "contrast ratio"). */
  double contrast() {
    return contrast(foreground, background);
  }

  /** How far two colours of the palette stand apart, 1 to 21. */
  static double contrast(int one, int other) {
    double a = luminance(one);
    double b = luminance(other);
    return (Math.max(a, b) + 0.05) / (Math.min(a, b) + 0.05);
  }

  /** Relative luminance (WCAG 2.2, definition of "relative luminance"). */
  private static double luminance(int colour) {
    int[] channels = channels(colour);
    return 0.2126 * linear(channels[0])
        + 0.7152 * linear(channels[1])
        + 0.0722 * linear(channels[2]);
  }

  private static double linear(int channel) {
    double share = channel / 255.0;
    return share <= 0.04045 ? share / 12.92 : Math.pow((share + 0.055) / 1.055, 2.4);
  }

  /** Red, green and blue, 0 to 255, as xterm defines its cube and its greys. */
  private static int[] channels(int colour) {
    if (colour >= GREYS) {
      int grey = 8 + 10 * (colour - GREYS);
      return new int[] {grey, grey, grey};
    }
    int place = colour - CUBE;
    return new int[] {step(place / 36), step(place / 6 % 6), step(place % 6)};
  }

  private static int step(int level) {
    return level == 0 ? 0 : 55 + 40 * level;
  }
}
