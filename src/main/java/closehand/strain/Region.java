package closehand.strain;

import java.util.Locale;

/**
 * A region of the body with its endurance curve, seconds = b0 x share of maximum ^ b1.
 *
 * <p>Coefficients: Frey Law and Avin 2010, table 2. There is no curve for the neck, the face or the
 * breath.
 */
public enum Region {
  /** All joints together. */
  GENERAL(21.92, -1.98),
  /** Foot. */
  ANKLE(34.71, -2.06),
  /** Back and belly. */
  TRUNK(22.69, -2.27),
  /** Elbow and forearm. */
  ELBOW(17.98, -2.21),
  /** Hand and grip; also the nearest to one finger or thumb. */
  HAND(33.55, -1.61),
  /** Knee. */
  KNEE(19.38, -1.88),
  /** Shoulder. */
  SHOULDER(14.86, -1.83);

  private final double factor;
  private final double exponent;

  Region(double factor, double exponent) {
    this.factor = factor;
    this.exponent = exponent;
  }

  double factor() {
    return factor;
  }

  double exponent() {
    return exponent;
  }

  /** Plain words. */
  public String words() {
    return name().toLowerCase(Locale.ROOT);
  }
}
