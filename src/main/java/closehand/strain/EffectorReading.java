package closehand.strain;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What one body part does in a plan.
 *
 * @param effector the body part
 * @param uses the actions it works
 * @param presses presses a minute and time held
 * @param light the load light; outside where the presses cannot be
 * @param index the strain index of all its presses; outside for parts that are no hand
 * @param hold its longest hold beside the careful limit; outside where there is no curve
 */
public record EffectorReading(
    String effector, List<Use> uses, LoadLight.Reading presses, Load light, Load index, Load hold) {
  /** A press shorter than this is no hold: our choice. */
  private static final double LEAST_HOLD_SECONDS = 1;

  public EffectorReading {
    uses = List.copyOf(uses);
  }

  /** Reads one body part; {@code uses} are all of it. */
  static EffectorReading of(String effector, List<Use> uses, Body body, double hoursPerDay) {
    List<Exertion> presses = uses.stream().map(Use::exertion).toList();
    OptionalDouble taps = body.taps(effector);
    return new EffectorReading(
        effector,
        uses,
        LoadLight.reading(presses, taps),
        LoadLight.of(presses, taps),
        CompositeStrain.of(presses, hoursPerDay),
        longestHold(presses));
  }

  private static Load longestHold(List<Exertion> presses) {
    return presses.stream()
        .filter(p -> p.seconds() >= LEAST_HOLD_SECONDS)
        .map(Endurance::of)
        .max(Comparator.comparingDouble(l -> l.amount().orElse(-1)))
        .orElse(Load.outside(Method.ENDURANCE, Flag.NOTHING_TO_DO));
  }

  /** Whether this part is red, or asked for more than can be. */
  public boolean isRed() {
    return light.figure().map(f -> f.band() == Band.UPPER).orElse(true);
  }

  /** How far it is towards its red line, 1 at the line; more than that where it cannot be. */
  public double towardsRed() {
    return light.amount().orElse(Double.POSITIVE_INFINITY);
  }

  /** The action whose absence would lighten this part most; empty for a part with no action. */
  public Optional<Use> heaviestUse(Body body) {
    return uses.stream()
        .min(Comparator.<Use>comparingDouble(u -> without(u, body)).thenComparing(Use::action));
  }

  /** How far towards the red line the part would be without this action. */
  public double without(Use one, Body body) {
    List<Exertion> others = uses.stream().filter(u -> !u.equals(one)).map(Use::exertion).toList();
    if (others.isEmpty()) {
      return 0;
    }
    return LoadLight.of(others, body.taps(effector)).amount().orElse(Double.POSITIVE_INFINITY);
  }
}
