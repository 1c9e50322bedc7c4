package closehand.plan.supply;

import closehand.bank.Approach;
import closehand.bank.PlanFigures;
import closehand.plan.KnownFacts;
import closehand.plan.problem.Pair;
import closehand.rules.Finding;
import closehand.rules.Standing;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.function.Function;

/** Makes out what a player can reach and work from answers, approaches and firing rules. */
public final class SupplyMaker {
  private static final String TEXT = "text";
  private static final String ONSCREEN = "ONSCREEN";
  private static final String LAYER = "MOUSE_LAYER";
  private static final int PANEL_BUTTONS = 6;
  private static final double ABOUT_AS_EASY = 1.3;

  private final PlanFigures figures;
  private final KnownFacts facts;
  private final Factors factors;
  private final Reach reach;
  private final Burden burden;
  private final List<SuppliedDevice> devices = new ArrayList<>();
  private final Map<String, BodyPart> body = new LinkedHashMap<>();
  private final Set<String> textBy = new LinkedHashSet<>();
  private final InputMaker inputs;
  private final Map<String, Integer> behind = new HashMap<>();

  private SupplyMaker(PlanFigures figures, KnownFacts facts, List<Finding> findings) {
    this.figures = figures;
    this.facts = facts;
    this.factors = new Factors(figures, findings);
    this.reach = new Reach(figures, facts, new BodyParts(figures, facts, findings));
    this.burden = new Burden(figures.parts(), facts);
    this.inputs = new InputMaker(figures, helperHands(facts));
  }

  /**
   * The inputs of these approaches that the player can reach and work.
   *
   * @param approaches which approaches may be used, and how the rules have them
   * @param findings what came of the rules
   * @param leadingPoints points of the rules for the approach that leads
   * @param mostParts how many separate parts; the bank's usual number when empty
   */
  public static Supply of(
      PlanFigures figures,
      KnownFacts facts,
      List<Standing> approaches,
      List<Finding> findings,
      int leadingPoints,
      OptionalInt mostParts) {
    SupplyMaker maker = new SupplyMaker(figures, facts, findings);
    approaches.forEach(s -> maker.behind.put(s.approach().id(), leadingPoints - s.points()));
    List<Approach> usable = approaches.stream().map(Standing::approach).toList();
    usable.forEach(maker::approach);
    usable.stream().filter(a -> a.id().equals(ONSCREEN)).forEach(maker::panel);
    boolean layered = usable.stream().anyMatch(a -> a.id().equals(LAYER));
    return maker.supply(layered, 2 * mostParts.orElse(figures.parts().most()));
  }

  private static Set<String> helperHands(KnownFacts facts) {
    Set<String> hands = new LinkedHashSet<>();
    for (String side : List.of("L", "R")) {
      if (facts.code("hand." + side + ".role").filter("bigPress"::equals).isPresent()) {
        hands.add(side + ".hand");
      }
    }
    return hands;
  }

  private Supply supply(boolean layered, int halfParts) {
    List<SuppliedInput> all = inputs.made();
    List<Pair> coupled = Couplings.of(facts, body.keySet());
    List<Pair> exclusive = new ArrayList<>(inputs.exclusive());
    exclusive.addAll(OneHome.of(facts, all));
    return new Supply(
        devices,
        all,
        body,
        coupled,
        exclusive,
        layered ? Layers.of(devices, all, body) : List.of(),
        halfParts,
        factors,
        List.copyOf(textBy),
        facts.missing());
  }

  private void approach(Approach approach) {
    PlanFigures.Family family = figures.families().get(approach.id());
    if (family == null || approach.id().equals(ONSCREEN)) {
      return;
    }
    boolean sided =
        approach.sides().equals("both")
            && List.of("hand", "digits", "arm").contains(family.occupies());
    for (String side : sided ? List.of("L", "R") : List.of("")) {
      device(approach, family, side);
    }
  }

  private void device(Approach approach, PlanFigures.Family family, String side) {
    String id = approach.id() + (side.isEmpty() ? "" : "@" + side);
    boolean any = false;
    Map<String, Integer> busy = new HashMap<>();
    for (Approach.Input input : approach.inputs()) {
      Optional<BodyPart> worker = worker(approach, input, side, busy);
      if (worker.isEmpty()) {
        continue;
      }
      BodyPart part = worker.get();
      if (input.does().contains(TEXT)) {
        textBy.add(approach.id());
        continue;
      }
      body.putIfAbsent(part.id(), part);
      busy.merge(part.id(), 1, Integer::sum);
      any |= inputs.add(approach, input, id, part.id());
    }
    if (any) {
      devices.add(made(approach, family, id, side));
    }
  }

  /**
   * The easiest part of the body for an input. Among fingers that find it about as easy the one
   * with the fewest inputs of this device is taken, so that no finger gets them all.
   */
  private Optional<BodyPart> worker(
      Approach approach, Approach.Input input, String side, Map<String, Integer> busy) {
    Set<String> uses = inputs.uses(approach, input);
    List<BodyPart> ways =
        input.effectors().stream()
            .filter(e -> side.isEmpty() || e.startsWith(side + "."))
            .map(e -> reach.of(approach, input, e))
            .flatMap(Optional::stream)
            .toList();
    if (ways.stream().anyMatch(p -> isOfHand(p.id()))) {
      ways = ways.stream().filter(p -> !p.id().endsWith(".foot")).toList();
    }
    if (approach.family().equals("joystick") && !busy.isEmpty()) {
      // Whoever moves a joystick also presses it.
      ways = ways.stream().filter(p -> busy.containsKey(p.id())).toList();
    }
    return easiest(input, ways, p -> factors.of(p.id(), uses, input.effort(), p.firm()), busy);
  }

  private static boolean isOfHand(String effector) {
    return effector.endsWith(".hand") || effector.length() == "L.T".length();
  }

  private Optional<BodyPart> easiest(
      Approach.Input input,
      List<BodyPart> ways,
      Function<BodyPart, Factors.Factor> factor,
      Map<String, Integer> busy) {
    double easiest = ways.stream().mapToDouble(p -> factor.apply(p).value()).min().orElse(0);
    boolean fingers = ways.stream().anyMatch(p -> p.id().length() == "L.T".length());
    boolean shared = fingers && input.kind().equals("button") && !inputs.isInCross(input);
    return ways.stream()
        .filter(p -> factor.apply(p).value() <= easiest * (shared ? ABOUT_AS_EASY : 1))
        .min(Comparator.comparingInt(p -> shared ? busy.getOrDefault(p.id(), 0) : 0));
  }

  private SuppliedDevice made(
      Approach approach, PlanFigures.Family family, String id, String side) {
    String own = side.isEmpty() ? (approach.sides().length() == 1 ? approach.sides() : "") : side;
    Set<String> hands =
        switch (family.occupies()) {
          case "hand", "arm" -> own.isEmpty() ? Set.of() : Set.of(own);
          case "bothHands" -> Set.of("L", "R");
          default -> Set.of();
        };
    Set<String> digits =
        family.occupies().equals("digits") && !own.isEmpty() ? Set.of(own) : Set.of();
    boolean software = approach.costClasses().contains("0");
    boolean switches = approach.family().equals("switch");
    String named =
        approach.words().brief() + (side.isEmpty() ? "" : side.equals("L") ? ", left" : ", right");
    return new SuppliedDevice(
        id,
        approach.id(),
        named,
        burden.of(approach, behind(approach, family)),
        software ? 0 : switches ? 1 : 2,
        hands,
        digits);
  }

  /** Rules come first among what takes a whole hand or the head; what is added to it is free. */
  private int behind(Approach approach, PlanFigures.Family family) {
    boolean main = List.of("hand", "bothHands", "head").contains(family.occupies());
    return main ? behind.getOrDefault(approach.id(), 0) : 0;
  }

  /** Buttons drawn on the screen are pressed by whatever moves the pointer. */
  private void panel(Approach approach) {
    for (SuppliedInput pointer : inputs.made()) {
      if (pointer.isPointer()) {
        approach.inputs().stream()
            .filter(i -> !i.does().contains(TEXT))
            .limit(PANEL_BUTTONS)
            .forEach(i -> inputs.add(approach, i, pointer.device(), pointer.effector()));
        textBy.add(approach.id());
      }
    }
  }
}
