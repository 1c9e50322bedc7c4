package closehand.strain;

/** What can drive a load. */
public enum Factor {
  /** How hard each press is for this person. */
  EFFORT,
  /** Presses a minute. */
  FREQUENCY,
  /** Seconds of each press. */
  DURATION,
  /** How far the wrist is bent. */
  POSTURE,
  /** Hours a day. */
  HOURS,
  /** How much of the time it is held. */
  HELD_SHARE,
  /** Presses beside the fastest tapping of this body part. */
  TAP_SHARE
}
