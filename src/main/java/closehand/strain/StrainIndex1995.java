package closehand.strain;

import java.util.List;

/**
 * The Strain Index of 1995 (Moore and Garg), as a second look beside the Revised Strain Index.
 *
 * <p>Its sheet leaves gaps between whole numbers; each step here reaches up to the next one.
 */
public final class StrainIndex1995 {
  private static final double[] EFFORT = {1, 3, 6, 9, 13};
  private static final double[] DURATION = {0.5, 1, 1.5, 2, 3};
  private static final double[] FREQUENCY = {0.5, 1, 1.5, 2, 3};
  private static final double[] POSTURE = {1, 1, 1.5, 2, 3};
  private static final double[] SPEED = {1, 1, 1, 1.5, 2};
  private static final double[] HOURS = {0.25, 0.5, 0.75, 1, 1.5};
  private static final double[] DURATION_STEPS = {10, 30, 50, 80};
  private static final double[] FREQUENCY_STEPS = {4, 9, 15, 20};
  private static final double[] HOURS_STEPS = {1, 2, 4, 8};
  private static final double[] EFFORT_TOPS = {2, 3, 5, 7};
  private static final double MIDDLE_LINE = 3;
  private static final double UPPER_LINE = 7;

  private StrainIndex1995() {}

  /**
   * The six multipliers.
   *
   * @param effort for how hard
   * @param duration for the share of time
   * @param frequency for efforts a minute
   * @param posture for hand and wrist
   * @param speed for the speed of work
   * @param hours for hours a day
   */
  public record Multipliers(
      double effort,
      double duration,
      double frequency,
      double posture,
      double speed,
      double hours) {
    /** The index. */
    public double product() {
      return effort * duration * frequency * posture * speed * hours;
    }
  }

  /**
   * The multipliers for a job.
   *
   * @param effortRating 0 to 10
   * @param sharePercent percent of the time at work
   * @param perMinute efforts a minute
   * @param postureLevel 1 very good to 5 very bad
   * @param speedLevel 1 very slow to 5 very fast
   * @param hoursPerDay hours a day
   */
  public static Multipliers multipliers(
      double effortRating,
      double sharePercent,
      double perMinute,
      int postureLevel,
      int speedLevel,
      double hoursPerDay) {
    int effortLevel = 0;
    while (effortLevel < EFFORT_TOPS.length && effortRating > EFFORT_TOPS[effortLevel]) {
      effortLevel++;
    }
    return new Multipliers(
        EFFORT[effortLevel],
        DURATION[level(DURATION_STEPS, sharePercent)],
        FREQUENCY[level(FREQUENCY_STEPS, perMinute)],
        POSTURE[postureLevel - 1],
        SPEED[speedLevel - 1],
        HOURS[level(HOURS_STEPS, hoursPerDay)]);
  }

  private static int level(double[] steps, double value) {
    int level = 0;
    while (level < steps.length && value >= steps[level]) {
      level++;
    }
    return level;
  }

  /** One kind of press as a second look, with posture and speed counted as fair. */
  public static Load of(Exertion press, double hoursPerDay) {
    if (BodyPart.hand(press.effector()).isEmpty()) {
      return Load.outside(Method.STRAIN_INDEX_1995, Flag.NOT_A_HAND);
    }
    if (press.isImpossible()) {
      return Load.outside(Method.STRAIN_INDEX_1995, Flag.MORE_THAN_A_MINUTE);
    }
    double share = 100 * press.secondsPerMinute() / Exertion.MINUTE;
    Multipliers all = multipliers(10 * press.effort(), share, press.perMinute(), 3, 3, hoursPerDay);
    return new Load.Figure(
        Method.STRAIN_INDEX_1995,
        all.product(),
        Band.of(all.product(), MIDDLE_LINE, UPPER_LINE),
        Driver.biggest(
            List.of(
                new Driver("", Factor.EFFORT, all.effort()),
                new Driver("", Factor.HELD_SHARE, all.duration()),
                new Driver("", Factor.FREQUENCY, all.frequency()),
                new Driver("", Factor.HOURS, all.hours()))),
        List.of(Flag.POSTURE_NOT_ASKED));
  }
}
