package closehand.strain;

import java.util.List;

/**
 * The Revised Strain Index of one repeated press (Garg, Moore, Kapellusch 2017a).
 *
 * <p>Index = effort x frequency x duration x posture x hours multiplier. It was made for cyclic
 * work; play is not cyclic, so averages over play stand in.
 */
public final class RevisedStrainIndex {
  /** Where the upper band begins: 10 in the literature; the sentence itself was not read. */
  public static final double UPPER_LINE = 10;

  /** Where the middle band begins: our choice, half of it. */
  public static final double MIDDLE_LINE = 5;

  private static final double OFTEN = 90;
  private static final double LONG = 60;
  private static final double FREQUENCY_AT_JOINT = 0.10 + 0.25 * OFTEN;
  private static final double DURATION_AT_JOINT = 0.45 + 0.31 * LONG;

  private RevisedStrainIndex() {}

  /** Effort multiplier for a share of the person's maximum, 0 to 1. */
  public static double effort(double share) {
    return share <= 0.4
        ? ((30 * share - 15.6) * share + 13) * share + 0.4
        : ((36 * share - 33.3) * share + 24.77) * share - 1.86;
  }

  /**
   * Frequency multiplier for presses a minute. The printed branches miss each other by 0.002 at 90;
   * the figure is held level there, so that more presses never count less.
   */
  public static double frequency(double perMinute) {
    return perMinute <= OFTEN
        ? 0.10 + 0.25 * perMinute
        : Math.max(FREQUENCY_AT_JOINT, 0.00334 * Math.pow(perMinute, 1.96));
  }

  /** Duration multiplier for seconds of each press; held level at its joint of 60 likewise. */
  public static double duration(double seconds) {
    return seconds <= LONG
        ? 0.45 + 0.31 * seconds
        : Math.max(DURATION_AT_JOINT, 19.17 * Math.log(seconds) - 59.44);
  }

  /** Posture multiplier for a wrist bent back (above 0) or towards the palm (below 0). */
  public static double posture(double wristDegrees) {
    if (wristDegrees < 0) {
      return 1.2 * Math.exp(-0.009 * wristDegrees) - 0.2;
    }
    double over = wristDegrees - 30;
    return over <= 0 ? 1 : 1 + 0.00028 * over * over;
  }

  /** Hours multiplier for hours a day. */
  public static double hours(double hoursPerDay) {
    return hoursPerDay <= 0.05 ? 0.20 : 0.042 * hoursPerDay + 0.090 * Math.log(hoursPerDay) + 0.477;
  }

  /** The index. */
  public static double index(Exertion press, double hoursPerDay) {
    return strengthOfOne(press) * frequency(press.perMinute()) * hours(hoursPerDay);
  }

  /** What one press weighs, however often it comes and however long the day is. */
  static double strengthOfOne(Exertion press) {
    return effort(press.effort()) * duration(press.seconds()) * posture(press.wristDegrees());
  }

  /** The figure for one kind of press; only for fingers, thumbs and hands. */
  public static Load of(Exertion press, double hoursPerDay) {
    if (BodyPart.hand(press.effector()).isEmpty()) {
      return Load.outside(Method.REVISED_STRAIN_INDEX, Flag.NOT_A_HAND);
    }
    if (press.isImpossible()) {
      return Load.outside(Method.REVISED_STRAIN_INDEX, Flag.MORE_THAN_A_MINUTE);
    }
    double value = index(press, hoursPerDay);
    return new Load.Figure(
        Method.REVISED_STRAIN_INDEX,
        value,
        Band.of(value, MIDDLE_LINE, UPPER_LINE),
        Driver.biggest(drivers(press, hoursPerDay)),
        List.of());
  }

  /**
   * What drives it, each beside a reference of our choice: a tenth of the maximum, 10 presses a
   * minute, half a second, a straight wrist, 2 hours.
   */
  static List<Driver> drivers(Exertion press, double hoursPerDay) {
    return List.of(
        new Driver("", Factor.EFFORT, effort(press.effort()) / effort(0.1)),
        new Driver("", Factor.FREQUENCY, frequency(press.perMinute()) / frequency(10)),
        new Driver("", Factor.DURATION, duration(press.seconds()) / duration(0.5)),
        new Driver("", Factor.POSTURE, posture(press.wristDegrees())),
        new Driver("", Factor.HOURS, hours(hoursPerDay) / hours(2)));
  }
}
