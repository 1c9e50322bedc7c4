package closehand.strain;

/**
 * One kind of press or hold that one body part does again and again in play, on average over play.
 *
 * @param effector the body part, such as {@code R.T}
 * @param effort how hard it is as a share of this person's own maximum there, 0 to 1
 * @param perMinute presses a minute of play, above 0
 * @param seconds how long each lasts, above 0
 * @param wristDegrees how far the wrist is bent, back above 0, towards the palm below 0, -90 to 90
 */
public record Exertion(
    String effector, double effort, double perMinute, double seconds, double wristDegrees) {
  /** Seconds in a minute: what the presses of one body part have to share. */
  public static final double MINUTE = 60;

  /** Rounding must not turn a full minute into too much. */
  static final double ROUNDING = 1e-9;

  /** Refuses what cannot be; {@link ExertionCheck} tells a reader of input beforehand. */
  public Exertion {
    if (!(effort >= 0 && effort <= 1)
        || !positive(perMinute)
        || !positive(seconds)
        || !(wristDegrees >= -90 && wristDegrees <= 90)) {
      throw new IllegalArgumentException("an exertion that cannot be; see ExertionCheck");
    }
  }

  /** A press with a straight wrist. */
  public Exertion(String effector, double effort, double perMinute, double seconds) {
    this(effector, effort, perMinute, seconds, 0);
  }

  private static boolean positive(double number) {
    return number > 0 && number < Double.POSITIVE_INFINITY;
  }

  /** Seconds of each minute of play that it takes. */
  public double secondsPerMinute() {
    return perMinute * seconds;
  }

  /** Whether its presses need more time than there is. */
  public boolean isImpossible() {
    return secondsPerMinute() > MINUTE + ROUNDING;
  }
}
