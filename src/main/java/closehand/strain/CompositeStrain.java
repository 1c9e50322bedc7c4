package closehand.strain;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * The Composite Strain Index: everything one hand does in a game (Garg, Moore, Kapellusch 2017b).
 *
 * <p>Published: the press with the highest index counts in full, each further one with its weight
 * times what its presses add to the frequency multiplier, in falling order of their indices. In
 * that order a harder press can lower the sum, by overtaking another. So that more never counts
 * less, the heaviest press brings the constant part of the multiplier here, and every press brings
 * its weight times its share of the rest. That equals the published sum wherever the highest index
 * belongs to the heaviest press and there are at most 90 presses a minute, and is never below it
 * for up to 90.
 */
public final class CompositeStrain {
  private static final double CONSTANT = 0.10;

  private CompositeStrain() {}

  /** What one kind of press adds to the index of its hand, for one hour-multiplier of 1. */
  record Part(Exertion press, double adds) {}

  /**
   * The figure for one hand.
   *
   * @param ofOneHand all presses of one hand
   * @param hoursPerDay hours a day, above 0
   */
  public static Load of(List<Exertion> ofOneHand, double hoursPerDay) {
    Method method = Method.COMPOSITE_STRAIN_INDEX;
    if (ofOneHand.isEmpty()) {
      return Load.outside(method, Flag.NOTHING_TO_DO);
    }
    if (ofOneHand.stream().anyMatch(p -> BodyPart.hand(p.effector()).isEmpty())) {
      return Load.outside(method, Flag.NOT_A_HAND);
    }
    if (OneMinute.isImpossible(ofOneHand)) {
      return Load.outside(method, Flag.MORE_THAN_A_MINUTE);
    }
    OneMinute minute = OneMinute.of(ofOneHand);
    List<Part> parts = parts(minute);
    double value = sum(parts) * RevisedStrainIndex.hours(hoursPerDay);
    return new Load.Figure(
        method,
        value,
        Band.of(value, RevisedStrainIndex.MIDDLE_LINE, RevisedStrainIndex.UPPER_LINE),
        drivers(parts, hoursPerDay),
        flags(minute, value, hoursPerDay));
  }

  /** The index without the hours; 0 for no presses. */
  static double withoutHours(List<Exertion> ofOneHand) {
    return sum(parts(OneMinute.of(ofOneHand)));
  }

  private static double sum(List<Part> parts) {
    double sum = 0;
    for (Part part : parts) {
      sum += part.adds;
    }
    return sum;
  }

  private static List<Flag> flags(OneMinute minute, double value, double hoursPerDay) {
    List<Flag> flags = new ArrayList<>();
    if (minute.overlapping()) {
      flags.add(Flag.OVERLAPPING);
    } else if (value > published(minute.presses(), hoursPerDay) * (1 + Exertion.ROUNDING)) {
      flags.add(Flag.ABOVE_PUBLISHED_ORDER);
    }
    return flags;
  }

  /** What each kind of press adds, in the order of the minute. */
  static List<Part> parts(OneMinute minute) {
    List<Exertion> presses = minute.presses();
    double perMinute = 0;
    int heaviest = 0;
    for (int i = 0; i < presses.size(); i++) {
      perMinute += presses.get(i).perMinute();
      heaviest = strength(presses, i) > strength(presses, heaviest) ? i : heaviest;
    }
    double perPress = (RevisedStrainIndex.frequency(perMinute) - CONSTANT) / perMinute;
    List<Part> parts = new ArrayList<>(presses.size());
    for (int i = 0; i < presses.size(); i++) {
      Exertion press = presses.get(i);
      // The constant belongs to a press of full length, even where others overlap it.
      double constant = i == heaviest ? CONSTANT * strength(presses, i) : 0;
      parts.add(new Part(press, minute.strengthOfOne(i) * press.perMinute() * perPress + constant));
    }
    return parts;
  }

  private static double strength(List<Exertion> presses, int place) {
    return RevisedStrainIndex.strengthOfOne(presses.get(place));
  }

  /** The two body parts that add most, each with what raises it most. */
  private static List<Driver> drivers(List<Part> parts, double hoursPerDay) {
    List<Driver> drivers = new ArrayList<>();
    List<EffectorShare> shares = EffectorShare.of(parts);
    for (EffectorShare share : shares.subList(0, Math.min(2, shares.size()))) {
      drivers.add(
          Driver.biggest(RevisedStrainIndex.drivers(share.heaviest(), hoursPerDay))
              .get(0)
              .of(share.effector()));
    }
    return drivers;
  }

  /** The sum in the published order, for comparison. */
  public static double published(List<Exertion> ofOneHand, double hoursPerDay) {
    List<Exertion> sorted = new ArrayList<>(ofOneHand);
    sorted.sort(
        Comparator.<Exertion>comparingDouble(p -> RevisedStrainIndex.index(p, hoursPerDay))
            .reversed());
    double sum = 0;
    double perMinute = 0;
    for (Exertion press : sorted) {
      double before = perMinute == 0 ? 0 : RevisedStrainIndex.frequency(perMinute);
      perMinute += press.perMinute();
      sum +=
          RevisedStrainIndex.strengthOfOne(press)
              * (RevisedStrainIndex.frequency(perMinute) - before);
    }
    return sum * RevisedStrainIndex.hours(hoursPerDay);
  }
}
