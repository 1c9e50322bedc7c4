package closehand.strain;

import java.util.List;

/**
 * How long a still hold can last (Frey Law and Avin 2010), and its careful edge.
 *
 * <p>The curves come from non-disabled adults who held until they could not go on. Measured times
 * scatter widely, so the lower edge of the printed spread is used: 0.53 of the curve.
 */
public final class Endurance {
  /** The lower edge of the printed spread. */
  public static final double CAREFUL_EDGE = 0.53;

  /** Below this share of the maximum there are no data. */
  public static final double LEAST_EFFORT = 0.10;

  /** Share of the careful limit from which a hold is worth watching: our choice. */
  public static final double WATCH = 0.20;

  /** Share of the careful limit from which a hold is worth another way: our choice. */
  public static final double RETHINK = 0.50;

  private static final double LEAST_EFFORT_ROHMERT = 0.20;

  private Endurance() {}

  /**
   * Seconds until the hold ends, by the curve of the region.
   *
   * @param share of the person's own maximum, 0.10 to 1; percent are refused
   */
  public static double seconds(Region region, double share) {
    if (!(share >= LEAST_EFFORT && share <= 1)) {
      throw new IllegalArgumentException("a share of the maximum outside 0.10 to 1");
    }
    return region.factor() * Math.pow(share, region.exponent());
  }

  /** Seconds at the careful edge of the curve. */
  public static double carefulSeconds(Region region, double share) {
    return CAREFUL_EDGE * seconds(region, share);
  }

  /**
   * Seconds by the older curve of Rohmert, as Bernard (2006) quotes it: a cross-check for tests, in
   * no figure of the program.
   *
   * @param share of the person's own maximum, 0.20 to 1
   */
  public static double rohmertSeconds(double share) {
    if (!(share >= LEAST_EFFORT_ROHMERT && share <= 1)) {
      throw new IllegalArgumentException("a share of the maximum outside 0.20 to 1");
    }
    return 60 * (-1.5 + 2.1 / share - 0.6 / (share * share) + 0.1 / (share * share * share));
  }

  /** One hold as a share of its careful limit; 1 and more is at or beyond it. */
  public static Load of(Exertion hold) {
    Region region = BodyPart.region(hold.effector()).orElse(null);
    if (region == null) {
      return Load.outside(Method.ENDURANCE, Flag.NO_METHOD_FOR_PART);
    }
    if (hold.effort() < LEAST_EFFORT) {
      return Load.outside(Method.ENDURANCE, Flag.EFFORT_OUTSIDE);
    }
    double value = hold.seconds() / carefulSeconds(region, hold.effort());
    return new Load.Figure(
        Method.ENDURANCE,
        value,
        Band.of(value, WATCH, RETHINK),
        Driver.biggest(drivers(region, hold)),
        BodyPart.isDigit(hold.effector()) ? List.of(Flag.NEAREST_PART) : List.of());
  }

  /** Of two holds of one body part, whether the first is nearer to the end of its curve. */
  static boolean isNearerItsLimit(Exertion one, Exertion other) {
    return used(one) > used(other);
  }

  /** The share of the curve that is used, without the factor of the region. */
  private static double used(Exertion hold) {
    double exponent = BodyPart.region(hold.effector()).map(Region::exponent).orElse(0.0);
    return hold.effort() < LEAST_EFFORT ? 0 : hold.seconds() / Math.pow(hold.effort(), exponent);
  }

  /** Effort and seconds, beside a fifth of the maximum and 10 seconds. */
  private static List<Driver> drivers(Region region, Exertion hold) {
    double effort = seconds(region, 0.2) / seconds(region, hold.effort());
    return List.of(
        new Driver("", Factor.EFFORT, effort),
        new Driver("", Factor.DURATION, hold.seconds() / 10));
  }
}
