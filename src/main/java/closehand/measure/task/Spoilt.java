package closehand.measure.task;

/** Why a go does not count although nobody stopped it. */
public enum Spoilt {
  HELD_KEY("heldKey", "A key was held down, or repeated by itself."),
  PASTED("pasted", "Something was pasted."),
  FOCUS_LOST("focusLost", "Another window took the keys."),
  RESIZED("resized", "The window changed its size."),
  DISCONNECTED("disconnected", "The terminal was cut off."),
  PAUSED("paused", "The machine paused."),
  ENDED_EARLY("endedEarly", "It ended before its time was up."),
  SET_ASIDE("setAside", "You chose that it does not count."),
  SPASM("spasm", "A spasm or cramp came in between.");

  private final String code;
  private final String words;

  Spoilt(String code, String words) {
    this.code = code;
    this.words = words;
  }

  /** The word used in files. */
  public String code() {
    return code;
  }

  /** The same in a plain sentence. */
  public String words() {
    return words;
  }
}
