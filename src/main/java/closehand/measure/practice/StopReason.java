package closehand.measure.practice;

import java.util.List;
import java.util.Optional;

/** Why a run was stopped. The first ten are the rules by which any measured task stops at once. */
public enum StopReason {
  WISH("I want to stop, or gave the stop signal"),
  PAIN("Pain went up by 2 or more, reached 7, or is sharp"),
  NUMB("New tingling, numbness or weakness"),
  FAINT("Dizzy, faint, grey, clammy, pounding headache or flushed face"),
  CHEST("Something in the chest, or hard breathing"),
  SPASM("A spasm or cramp that came again, or did not settle in a minute"),
  SKIN("A mark, a blister or bleeding on the skin"),
  SEAT("Sliding in the seat, or losing balance"),
  DISTRESS("It is upsetting, or three goes in a row did not come off"),
  ALONE("The call dropped, or my helper left"),
  TIME("Twelve minutes of timed work are enough for one day"),
  CLOSED("The terminal was closed");

  /** The ten signs by which anything that is tried stops at once, in their usual order. */
  public static final List<StopReason> SIGNS =
      List.of(WISH, PAIN, NUMB, FAINT, CHEST, SPASM, SKIN, SEAT, DISTRESS, ALONE);

  private final String words;

  StopReason(String words) {
    this.words = words;
  }

  /** In the player's words. */
  public String words() {
    return words;
  }

  /** Whether the warning signs are asked again after it, before anything else. */
  public boolean asksAgain() {
    return this != TIME && this != CLOSED;
  }

  /** The reason with this name, as in a file. */
  public static Optional<StopReason> named(String name) {
    for (StopReason reason : values()) {
      if (reason.name().equalsIgnoreCase(name)) {
        return Optional.of(reason);
      }
    }
    return Optional.empty();
  }
}
