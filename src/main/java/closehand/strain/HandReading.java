package closehand.strain;

import java.util.List;

/**
 * What one hand does in a plan.
 *
 * @param hand which hand
 * @param composite its composite strain index
 * @param shares which body part brings how much of it, most first; empty where it is outside
 * @param activity hand activity against the lines of 2001 and of 2018
 * @param pressShare its share of all presses of the plan, 0 to 1
 */
public record HandReading(
    BodyPart.Hand hand,
    Load composite,
    List<EffectorShare> shares,
    List<Load> activity,
    double pressShare) {
  public HandReading {
    shares = List.copyOf(shares);
    activity = List.copyOf(activity);
  }

  static HandReading of(
      BodyPart.Hand hand, List<Exertion> presses, double hoursPerDay, double pressShare) {
    Load composite = CompositeStrain.of(presses, hoursPerDay).flagged(Flag.WRIST_NOT_ASKED);
    return new HandReading(
        hand,
        composite,
        composite.figure().isPresent() ? EffectorShare.of(presses, hoursPerDay) : List.of(),
        HandActivity.of(presses, hoursPerDay),
        pressShare);
  }

  /** Whether the sum lies in the upper band, or cannot be told. */
  public boolean isHeavy() {
    return composite.figure().map(f -> f.band() == Band.UPPER).orElse(true);
  }
}
