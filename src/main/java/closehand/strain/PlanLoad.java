package closehand.strain;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;

/**
 * What a plan asks of the body.
 *
 * @param title the game
 * @param body what is known of the person
 * @param time how much is played
 * @param effectors every body part with a job, heaviest first
 * @param hands the hands with a job
 * @param cautions cautions that the figures raise
 * @param flags what to know beside all figures
 */
public record PlanLoad(
    String title,
    Body body,
    PlayTime time,
    List<EffectorReading> effectors,
    List<HandReading> hands,
    List<LoadCaution> cautions,
    List<Flag> flags) {
  public PlanLoad {
    effectors = List.copyOf(effectors);
    hands = List.copyOf(hands);
    cautions = List.copyOf(cautions);
    flags = List.copyOf(flags);
  }

  /**
   * Works out the load of a plan.
   *
   * @param uses every action with a place, in any order
   */
  public static PlanLoad of(String title, List<Use> uses, Body body, PlayTime time) {
    double hours = time.hoursPerDay();
    Map<String, List<Use>> byPart = new TreeMap<>();
    double allPresses = 0;
    for (Use use : uses) {
      byPart.computeIfAbsent(use.effector(), k -> new ArrayList<>()).add(use);
      allPresses += use.exertion().perMinute();
    }
    List<EffectorReading> effectors = new ArrayList<>();
    byPart.forEach((part, own) -> effectors.add(EffectorReading.of(part, own, body, hours)));
    effectors.sort(
        Comparator.comparingDouble(EffectorReading::heaviness)
            .reversed()
            .thenComparing(EffectorReading::effector));
    List<HandReading> hands = new ArrayList<>();
    for (BodyPart.Hand hand : BodyPart.Hand.values()) {
      List<Exertion> presses = ofHand(uses, hand);
      if (!presses.isEmpty()) {
        double own = presses.stream().mapToDouble(Exertion::perMinute).sum();
        hands.add(HandReading.of(hand, presses, hours, own / allPresses));
      }
    }
    return new PlanLoad(
        title,
        body,
        time,
        effectors,
        hands,
        LoadCautions.of(effectors, hands, hours),
        flags(byPart.keySet(), body));
  }

  private static List<Flag> flags(Set<String> parts, Body body) {
    List<Flag> flags = new ArrayList<>();
    if (!body.effort().keySet().containsAll(parts)) {
      flags.add(Flag.EFFORT_NOT_RATED);
    }
    flags.add(Flag.WRIST_NOT_ASKED);
    flags.add(Flag.DAYS_NOT_COUNTED);
    return flags;
  }

  private static List<Exertion> ofHand(List<Use> uses, BodyPart.Hand hand) {
    return uses.stream()
        .map(Use::exertion)
        .filter(e -> BodyPart.hand(e.effector()).filter(hand::equals).isPresent())
        .toList();
  }

  /** The presses of one hand. */
  List<Exertion> presses(BodyPart.Hand hand) {
    return ofHand(effectors.stream().flatMap(e -> e.uses().stream()).toList(), hand);
  }

  /**
   * The body part with most to do beside what it can; empty for a plan without presses. Where a
   * hand as a whole lies in the upper band and none of its parts does, it is the part that brings
   * most to that hand.
   */
  public Optional<EffectorReading> heaviest() {
    Optional<EffectorReading> first = effectors.stream().findFirst();
    return first.filter(e -> e.band() == Band.UPPER).isPresent()
        ? first
        : mostOfAHeavyHand().or(() -> first);
  }

  private Optional<EffectorReading> mostOfAHeavyHand() {
    return hands.stream()
        .filter(h -> h.composite().figure().filter(f -> f.band() == Band.UPPER).isPresent())
        .max(Comparator.comparingDouble(h -> h.composite().amount().orElse(0)))
        .flatMap(h -> h.shares().stream().findFirst())
        .flatMap(
            s -> effectors.stream().filter(e -> e.effector().equals(s.effector())).findFirst());
  }

  /** Whether the hand of a body part lies in the upper band as a whole. */
  public boolean isOfAHeavyHand(String effector) {
    return hands.stream()
        .filter(h -> BodyPart.hand(effector).filter(h.hand()::equals).isPresent())
        .anyMatch(h -> h.composite().figure().filter(f -> f.band() == Band.UPPER).isPresent());
  }

  /** The composite index of the heavier hand; 0 without hands, without end where it is outside. */
  public double heavierHand() {
    return hands.stream()
        .mapToDouble(h -> h.composite().amount().orElse(Double.POSITIVE_INFINITY))
        .max()
        .orElse(0);
  }

  /** Body parts that are red and whose load no clinician has accepted: they block the plan. */
  public List<EffectorReading> blocking(List<Accepted> accepted) {
    return effectors.stream()
        .filter(EffectorReading::isRed)
        .filter(e -> accepted.stream().noneMatch(a -> a.effector().equals(e.effector())))
        .toList();
  }
}
