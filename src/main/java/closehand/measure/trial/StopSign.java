package closehand.measure.trial;

import java.util.Optional;

/**
 * What ends a trial at once. Practice estimates, to be confirmed by a clinician.
 *
 * <p>Whoever stopped is never asked to go on. What stands with {@link #isUrgent} needs somebody at
 * once, not later.
 */
public enum StopSign {
  WISH("wish", "You said or showed stop.", false),
  PAIN("pain", "Pain went up by 2 or more, reached 7, or is sharp.", false),
  NUMB("numb", "New tingling, numbness or weakness.", true),
  FAINT("faint", "Giddy, faint, grey, clammy, flushed, or a pounding headache.", true),
  CHEST("chest", "Something in the chest, or hard breathing.", true),
  SPASM("spasm", "A spasm or cramp that did not settle in a minute, or came back.", false),
  SKIN("skin", "A mark on the skin, a blister, or bleeding.", false),
  BALANCE("balance", "Sliding in the seat, or losing balance.", false),
  DISTRESS("distress", "It is upsetting, or three tries in a row did not come off.", false),
  ALONE("alone", "The call dropped, or the helper left.", false);

  private final String code;
  private final String words;
  private final boolean urgent;

  StopSign(String code, String words, boolean urgent) {
    this.code = code;
    this.words = words;
    this.urgent = urgent;
  }

  /** The name in files. */
  public String code() {
    return code;
  }

  /** Plain words, a whole sentence. */
  public String words() {
    return words;
  }

  /** Whether somebody is to be called at once if it does not pass. */
  public boolean isUrgent() {
    return urgent;
  }

  /** Whether it is something the player felt, so that warning signs are asked again after it. */
  public boolean isOfBody() {
    return this != WISH && this != ALONE;
  }

  /** The one with this code. */
  public static Optional<StopSign> of(String code) {
    return java.util.Arrays.stream(values()).filter(s -> s.code.equals(code)).findFirst();
  }
}
