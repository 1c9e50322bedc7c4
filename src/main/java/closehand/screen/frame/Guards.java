package closehand.screen.frame;

/**
 * How long keys are ignored after others, so that a held or bouncing key counts once.
 *
 * @param holdMillis how long the same key must rest before it counts again, in milliseconds; 0 is
 *     off
 * @param bounceMillis how long any other key must wait, in milliseconds; 0 is off
 */
public record Guards(int holdMillis, int bounceMillis) {
  /** The usual guards: longer than the usual delay before a held key repeats; no bounce guard. */
  public static final Guards USUAL = new Guards(750, 0);
}
