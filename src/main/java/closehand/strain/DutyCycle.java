package closehand.strain;

import java.util.List;

/**
 * How large a part of the time an effort can fill (Potvin 2012), written down from memory.
 *
 * <p>To be checked against the paper; never more than a hint that a pattern leaves little time to
 * let go.
 */
public final class DutyCycle {
  private static final double EXPONENT = 0.24;
  private static final double ONE_SECOND_OF_A_DAY = 1.0 / 28_800;

  private DutyCycle() {}

  /** The largest share of the time for an effort, both 0 to 1; never above 1. */
  public static double largestShare(double effort) {
    return Math.min(1, Math.pow(1 - effort, 1 / EXPONENT) + ONE_SECOND_OF_A_DAY);
  }

  /** Time used of the time there is, for all presses of one body part; 1 is all of it. */
  public static Load of(List<Exertion> ofOnePart) {
    if (ofOnePart.isEmpty()) {
      return Load.outside(Method.DUTY_CYCLE, Flag.NOTHING_TO_DO);
    }
    double used =
        ofOnePart.stream()
            .mapToDouble(p -> p.secondsPerMinute() / Exertion.MINUTE / largestShare(p.effort()))
            .sorted()
            .sum();
    double effort = ofOnePart.stream().mapToDouble(Exertion::effort).max().orElse(0);
    double held =
        ofOnePart.stream().mapToDouble(Exertion::secondsPerMinute).sorted().sum() / Exertion.MINUTE;
    return new Load.Figure(
        Method.DUTY_CYCLE,
        used,
        Band.of(used, 0.5, 1),
        Driver.biggest(
            List.of(
                new Driver("", Factor.EFFORT, 1 / largestShare(effort)),
                new Driver("", Factor.HELD_SHARE, held / 0.25))),
        List.of());
  }
}
