package closehand.plan.problem;

import java.util.Optional;

/**
 * A part of the body that works inputs: a finger, a foot, the voice.
 *
 * @param id unique among effectors
 * @param name how it is called
 * @param usable whether it may be used at all
 * @param limit what a plan may never go above
 * @param amber from where on more costs extra, if anywhere
 */
public record Effector(
    String id, String name, boolean usable, LoadLimit limit, Optional<Amber> amber) {

  /**
   * How much work in a minute.
   *
   * @param pressesTenths tenths of a press a minute, 0 or more
   * @param heldMillis milliseconds held a minute, 0 or more
   */
  public record LoadLimit(int pressesTenths, int heldMillis) {}

  /**
   * From where on more costs extra, so that a plan stays below where it can.
   *
   * @param from up to here nothing is added
   * @param pointsPerPress added for each press a minute above, 0 to 1,000
   * @param pointsPerHeldSecond added for each second held a minute above, 0 to 1,000
   */
  public record Amber(LoadLimit from, int pointsPerPress, int pointsPerHeldSecond) {}
}
