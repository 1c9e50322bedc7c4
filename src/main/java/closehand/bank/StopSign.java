package closehand.bank;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * What ends at once whatever the player does: a measured task, practice, pointing, a trial. The ten
 * rules are one list for all of them; a bank says in {@code tasks.json} how each is put and what to
 * do then. Practice estimates, to be confirmed by a clinician.
 *
 * <p>Whoever stopped is never asked to go on.
 */
public enum StopSign {
  /** The player said or showed stop. */
  WISH("signal", "wish"),
  /** Pain rose by 2 points, reached 7, or is sharp. */
  PAIN("pain"),
  /** New tingling, numbness or weakness. */
  NUMB("tingling", "numb"),
  /** Giddy, faint, grey, clammy, a pounding headache, a flushed face. */
  FAINT("giddy", "faint"),
  /** The chest, or hard breathing. */
  CHEST("chest"),
  /** A spasm or cramp that did not settle, or came back. */
  SPASM("spasm"),
  /** A mark, a blister, bleeding. */
  SKIN("skin"),
  /** Sliding in the seat, or losing balance. */
  BALANCE("balance", "seat"),
  /** It is upsetting, or three in a row did not come off. */
  DISTRESS("distress"),
  /** The call dropped, or the helper left. */
  ALONE("alone");

  private final String code;
  private final List<String> formerly;

  StopSign(String code, String... formerly) {
    this.code = code;
    this.formerly = List.of(formerly);
  }

  /** The name in files. */
  public String code() {
    return code;
  }

  /**
   * Whether nothing may follow before it was looked at: no other activity, and no trial that day.
   */
  public boolean isUrgent() {
    return this == NUMB || this == FAINT || this == CHEST;
  }

  /**
   * Whether the body spoke, so that nothing more is measured, practised or tried on that day. Three
   * goes that did not come off say something about the task alone.
   */
  public boolean endsTheDay() {
    return isFelt() && this != DISTRESS;
  }

  /** Whether it is something the player felt, so that another trial waits for a review. */
  public boolean isFelt() {
    return this != WISH && this != ALONE;
  }

  /** The one with this name in files, also one that older cases have. */
  public static Optional<StopSign> named(String name) {
    return Arrays.stream(values())
        .filter(s -> s.code.equals(name) || s.formerly.contains(name))
        .findFirst();
  }
}
