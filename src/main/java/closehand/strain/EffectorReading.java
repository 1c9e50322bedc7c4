package closehand.strain;

import java.util.ArrayList;
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
  public EffectorReading {
    uses = List.copyOf(uses);
  }

  /** Reads one body part; {@code uses} are all of it. */
  static EffectorReading of(String effector, List<Use> uses, Body body, double hoursPerDay) {
    List<Exertion> presses = new ArrayList<>(uses.size());
    Exertion longest = null;
    for (Use use : uses) {
      Exertion press = use.exertion();
      presses.add(press);
      if (use.kind() == Use.Kind.HOLD
          && (longest == null || Endurance.isNearerItsLimit(press, longest))) {
        longest = press;
      }
    }
    return new EffectorReading(
        effector,
        uses,
        presses(uses, body.taps(effector)),
        light(uses, body.taps(effector)),
        CompositeStrain.of(presses, hoursPerDay).flagged(Flag.WRIST_NOT_ASKED),
        longest == null
            ? Load.outside(Method.ENDURANCE, Flag.NOTHING_TO_DO)
            : Endurance.of(longest));
  }

  private static LoadLight.Reading presses(List<Use> uses, OptionalDouble taps) {
    List<Exertion> all = new ArrayList<>(uses.size());
    List<Exertion> holds = new ArrayList<>();
    for (Use use : uses) {
      all.add(use.exertion());
      if (use.kind() == Use.Kind.HOLD) {
        holds.add(use.exertion());
      }
    }
    return LoadLight.reading(all, holds, taps);
  }

  /** Moving leaves room for pressing, so only presses and holds must fit into the minute. */
  private static Load light(List<Use> uses, OptionalDouble taps) {
    List<Exertion> pressed =
        uses.stream().filter(u -> u.kind() != Use.Kind.MOVE).map(Use::exertion).toList();
    return OneMinute.isImpossible(pressed)
        ? Load.outside(Method.LOAD_LIGHT, Flag.MORE_THAN_A_MINUTE)
        : LoadLight.of(presses(uses, taps));
  }

  /**
   * The index of 1995 of the press that is heaviest by it, as a second look beside {@link #index};
   * outside for parts that are no hand.
   */
  public Load secondLook(double hoursPerDay) {
    Load heaviest = Load.outside(Method.STRAIN_INDEX_1995, Flag.NOTHING_TO_DO);
    for (Use use : uses) {
      Load one = StrainIndex1995.of(use.exertion(), hoursPerDay);
      if (one.amount().orElse(0) >= heaviest.amount().orElse(0)) {
        heaviest = one;
      }
    }
    return heaviest;
  }

  /** Whether the two indexes lie as far apart as their bands can, so that somebody should look. */
  public boolean indexesDisagree(double hoursPerDay) {
    Optional<Band> newer = index.figure().map(Load.Figure::band);
    Optional<Band> older = secondLook(hoursPerDay).figure().map(Load.Figure::band);
    return newer.isPresent()
        && older.isPresent()
        && newer.get() != older.get()
        && newer.get() != Band.MIDDLE
        && older.get() != Band.MIDDLE;
  }

  /** Whether this part is red, or asked for more than can be. */
  public boolean isRed() {
    return light.figure().map(f -> f.band() == Band.UPPER).orElse(true);
  }

  /**
   * How much it has to do beside what it can, as a share of the upper line of light or strain
   * index, whichever is nearer: 1 at the line; without end where it cannot be. The light counts
   * presses and time alone, the index effort too.
   */
  public double heaviness() {
    return Math.max(towardsRed(), towardsUpperLine(index));
  }

  /** Light or strain index: the one that is nearer its upper line, and so the reason to say. */
  public Load heavier() {
    return towardsUpperLine(index) > towardsRed() ? index : light;
  }

  /** The heavier of the bands of light and strain index; the upper one where it cannot be. */
  public Band band() {
    Band light = this.light.figure().map(Load.Figure::band).orElse(Band.UPPER);
    return index.figure().map(Load.Figure::band).map(light::orHeavier).orElse(light);
  }

  /** Whether its own strain index, with the effort of each press, lies in the upper band. */
  public boolean isHeavyByIndex() {
    return index.figure().filter(f -> f.band() == Band.UPPER).isPresent();
  }

  private double towardsRed() {
    return light.amount().orElse(Double.POSITIVE_INFINITY);
  }

  private static double towardsUpperLine(Load index) {
    return index.amount().orElse(0) / RevisedStrainIndex.UPPER_LINE;
  }

  /**
   * The action whose absence would lighten this part most; empty for a part with no action.
   *
   * @param hoursPerDay hours of play a day, above 0
   */
  public Optional<Use> heaviestUse(Body body, double hoursPerDay) {
    return uses.stream()
        .min(
            Comparator.<Use>comparingDouble(u -> without(u, body, hoursPerDay))
                .thenComparing(Use::action));
  }

  /** Its {@link #heaviness} without this action; 0 where nothing is left. */
  public double without(Use one, Body body, double hoursPerDay) {
    List<Use> others = uses.stream().filter(u -> !u.equals(one)).toList();
    return others.isEmpty() ? 0 : of(effector, others, body, hoursPerDay).heaviness();
  }
}
