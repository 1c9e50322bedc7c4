package closehand.measure.norms;

/** Kinds of hand strength that tables exist for. */
public enum Strength {
  /** The whole hand round a handle. */
  GRIP("grip", "grip"),
  /** Tip of the thumb against the tip of the index finger. */
  TIP_PINCH("tip pinch", "pinch with the finger tips"),
  /** Thumb against the side of the index finger. */
  KEY_PINCH("key pinch", "pinch as with a key"),
  /** Thumb against two fingers. */
  PALMAR_PINCH("palmar pinch", "pinch with thumb and two fingers");

  private final String code;
  private final String words;

  Strength(String code, String words) {
    this.code = code;
    this.words = words;
  }

  /** The name in the tables' file. */
  public String code() {
    return code;
  }

  /** Plain words. */
  public String words() {
    return words;
  }
}
