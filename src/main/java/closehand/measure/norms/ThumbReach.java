package closehand.measure.norms;

/**
 * How far a thumb may reach, from the length of the hand: geometry of two bones that bend; an
 * estimate that asks for a try.
 *
 * @param proximalShare first bone beyond the knuckle, as a share of hand length
 * @param distalShare last bone, as a share of hand length
 * @param withShiftShare reach from the thumb's base with the grip moved, as a share of hand length
 * @param bendDegrees how far the last joint bends
 * @param turnDegrees how far the thumb swings sideways
 * @param source where shares and angles come from
 * @param status how far they can be leaned on
 */
public record ThumbReach(
    double proximalShare,
    double distalShare,
    double withShiftShare,
    double bendDegrees,
    double turnDegrees,
    String source,
    String status) {

  /**
   * A reach, in the unit of the hand length.
   *
   * @param nearest from the knuckle with the last joint bent
   * @param farthest from the knuckle with the thumb straight
   * @param sweep length of the arc that the tip can cover
   * @param withShift from the base of the thumb when the grip may move
   */
  public record Zone(double nearest, double farthest, double sweep, double withShift) {}

  /** The zone for a hand of this length, above 0. */
  public Zone of(double handLength) {
    return of(handLength, bendDegrees, turnDegrees);
  }

  /** The same with measured angles. */
  public Zone of(double handLength, double bend, double turn) {
    double first = proximalShare * handLength;
    double last = distalShare * handLength;
    double farthest = first + last;
    double nearest =
        Math.sqrt(first * first + last * last + 2 * first * last * Math.cos(Math.toRadians(bend)));
    double sweep = Math.toRadians(turn) * (farthest + nearest) / 2;
    return new Zone(nearest, farthest, sweep, withShiftShare * handLength);
  }
}
