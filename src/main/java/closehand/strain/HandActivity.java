package closehand.strain;

import java.util.List;

/**
 * Hand activity level (Radwin et al. 2015) and the limit lines of 2001 and 2018.
 *
 * <p>Defined for 4 to 8 hours a day and for efforts above a tenth of the maximum only.
 */
public final class HandActivity {
  private static final double LEAST_PER_SECOND = 0.125;
  private static final double MOST_PER_SECOND = 1.67;
  private static final double LEAST_SHARE = 11;
  private static final double MOST_SHARE = 100;
  private static final double LEAST_EFFORT = 0.10;
  private static final double LEAST_HOURS = 4;
  private static final double MOST_HOURS = 8;

  private HandActivity() {}

  /**
   * The two lines at an activity level: peak effort, 0 to 10, above which to act or stop.
   *
   * @param action where to begin to change something
   * @param limit what not to exceed
   */
  public record Lines(double action, double limit) {}

  /**
   * The level, about 0 to 10.
   *
   * @param perSecond efforts a second
   * @param sharePercent percent of the time at work, 1 to 100
   */
  public static double level(double perSecond, double sharePercent) {
    double paced = Math.pow(perSecond, 1.31);
    return 6.56 * Math.log(sharePercent) * paced / (1 + 3.18 * paced);
  }

  /** The lines of 2001. */
  public static Lines lines2001(double level) {
    return new Lines(0.56 * (10 - level), 0.78 * (10 - level));
  }

  /** The lines of 2018; the action line ends at 0. */
  public static Lines lines2018(double level) {
    return new Lines(Math.max(0, 3.6 - 0.56 * level), Math.max(0, 5.6 - 0.56 * level));
  }

  /** One hand against both generations of lines, the older first. */
  public static List<Load> of(List<Exertion> ofOneHand, double hoursPerDay) {
    return List.of(
        of(Method.HAND_ACTIVITY_2001, ofOneHand, hoursPerDay),
        of(Method.HAND_ACTIVITY_2018, ofOneHand, hoursPerDay));
  }

  private static Load of(Method method, List<Exertion> ofOneHand, double hoursPerDay) {
    // Lighter efforts are left out of the count, as the published scope asks.
    List<Exertion> counted =
        ofOneHand.stream()
            .filter(p -> BodyPart.hand(p.effector()).isPresent() && p.effort() > LEAST_EFFORT)
            .toList();
    if (counted.isEmpty()) {
      return Load.outside(method, ofOneHand.isEmpty() ? Flag.NOTHING_TO_DO : Flag.EFFORT_OUTSIDE);
    }
    if (!within(hoursPerDay, LEAST_HOURS, MOST_HOURS)) {
      return Load.outside(method, Flag.HOURS_OUTSIDE);
    }
    if (OneMinute.isImpossible(counted)) {
      return Load.outside(method, Flag.MORE_THAN_A_MINUTE);
    }
    double perSecond = counted.stream().mapToDouble(Exertion::perMinute).sum() / 60;
    if (!within(perSecond, LEAST_PER_SECOND, MOST_PER_SECOND)) {
      return Load.outside(method, Flag.FREQUENCY_OUTSIDE);
    }
    double seconds = counted.stream().mapToDouble(Exertion::secondsPerMinute).sum();
    double share = 100 * Math.min(1, seconds / Exertion.MINUTE);
    if (!within(share, LEAST_SHARE, MOST_SHARE)) {
      return Load.outside(method, Flag.SHARE_OUTSIDE);
    }
    double peak = 10 * counted.stream().mapToDouble(Exertion::effort).max().orElse(0);
    return figure(method, level(perSecond, share), peak, perSecond, share);
  }

  private static Load figure(
      Method method, double level, double peak, double perSecond, double share) {
    Lines lines = method == Method.HAND_ACTIVITY_2001 ? lines2001(level) : lines2018(level);
    return new Load.Figure(
        method,
        level,
        Band.of(peak, lines.action(), lines.limit()),
        Driver.biggest(
            List.of(
                new Driver("", Factor.EFFORT, peak),
                new Driver("", Factor.FREQUENCY, level(perSecond, share) / level(0.25, share)),
                new Driver("", Factor.HELD_SHARE, level(perSecond, share) / level(perSecond, 20)))),
        List.of());
  }

  private static boolean within(double value, double least, double most) {
    return value >= least && value <= most;
  }
}
