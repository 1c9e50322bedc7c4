package closehand.plan;

import closehand.plan.demand.Demand;
import closehand.plan.demand.WantedAction;
import closehand.plan.problem.Placement;
import closehand.plan.problem.PlacementRules;
import closehand.plan.problem.PlanProblem;
import closehand.plan.problem.Slot;
import closehand.plan.problem.Wishes;
import closehand.plan.supply.SuppliedInput;
import closehand.plan.supply.Supply;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/** Turns wishes of people into pins of the search. */
final class WishReading {
  private final PlanProblem problem;
  private final Supply supply;
  private final Demand demand;

  WishReading(PlanProblem problem, Supply supply, Demand demand) {
    this.problem = problem;
    this.supply = supply;
    this.demand = demand;
  }

  /**
   * The wishes with a pin each; {@link #unread} tells what cannot be read.
   *
   * @param wishes in groups: a group gives way to those before it where both speak of one action;
   *     within a group the later wish counts
   */
  Wishes of(List<List<PlanAsk.Wish>> wishes) {
    Wishes impossible = problem.wishes();
    List<Wishes.Pin> pins = new ArrayList<>();
    for (List<PlanAsk.Wish> group : wishes) {
      Set<String> before = new HashSet<>();
      pins.forEach(p -> before.add(p.action()));
      for (PlanAsk.Wish wish : group) {
        pin(wish)
            .filter(p -> !before.contains(p.action()))
            .ifPresent(
                p -> {
                  pins.removeIf(earlier -> earlier.action().equals(p.action()));
                  pins.add(p);
                });
      }
    }
    return new Wishes(pins, impossible.bans(), impossible.mustPlace(), impossible.habits());
  }

  /** Why a wish cannot be kept here; empty when it can. */
  Optional<String> unread(PlanAsk.Wish wish) {
    Optional<WantedAction> action = action(demand, wish.action());
    if (action.isEmpty()) {
      return Optional.of("No game here has an action \"" + wish.action() + "\".");
    }
    if (inputs(wish.input()).isEmpty()) {
      return Optional.of("Nothing within reach is called \"" + wish.input() + "\".");
    }
    return pin(wish).isPresent()
        ? Optional.empty()
        : Optional.of(
            "\"" + action.get().name() + "\" cannot be worked on \"" + wish.input() + "\".");
  }

  /** The name of an action that two of these wishes speak of, if there is one. */
  Optional<String> wishedTwice(List<PlanAsk.Wish> wishes) {
    Set<String> seen = new HashSet<>();
    return wishes.stream()
        .flatMap(w -> action(demand, w.action()).stream())
        .filter(a -> !seen.add(a.id()))
        .map(WantedAction::name)
        .findFirst();
  }

  /** The pin a wish means: the cheapest way to work that input for that action. */
  Optional<Wishes.Pin> pin(PlanAsk.Wish wish) {
    Optional<WantedAction> action = action(demand, wish.action());
    PlacementRules rules = new PlacementRules(problem);
    return action.flatMap(
        a ->
            inputs(wish.input()).stream()
                .filter(i -> problem.equipment().inputs().stream().anyMatch(p -> p.id().equals(i)))
                .flatMap(i -> rules.possible(a.id()).stream().filter(p -> isOn(p, i)))
                .min(Comparator.comparingLong(p -> rules.cost(p).total()))
                .map(p -> new Wishes.Pin(a.id(), p.slot(), Optional.of(p.mode()))));
  }

  private static boolean isOn(Placement placement, String input) {
    return placement.slot().equals(Slot.base(input));
  }

  /** The action somebody means by its id, its name or the beginning of its name. */
  static Optional<WantedAction> action(Demand demand, String said) {
    String plain = said.strip().toLowerCase(Locale.ROOT);
    List<WantedAction> actions = demand.actions();
    return first(actions, a -> a.id().toLowerCase(Locale.ROOT).equals(plain))
        .or(() -> first(actions, a -> a.name().toLowerCase(Locale.ROOT).equals(plain)))
        .or(() -> first(actions, a -> a.name().toLowerCase(Locale.ROOT).startsWith(plain)))
        .or(() -> first(actions, a -> a.of().toLowerCase(Locale.ROOT).equals(plain)));
  }

  private static Optional<WantedAction> first(
      List<WantedAction> actions, java.util.function.Predicate<WantedAction> fits) {
    return actions.stream().filter(fits).findFirst();
  }

  /** Ids of the inputs somebody means; capitals count where they tell two inputs apart. */
  List<String> inputs(String said) {
    String plain = said.strip();
    List<String> exact =
        supply.inputs().stream()
            .filter(i -> List.of(i.id(), i.path(), i.input()).contains(plain))
            .map(SuppliedInput::id)
            .toList();
    return exact.isEmpty()
        ? supply.inputs().stream()
            .filter(i -> means(i, plain.toLowerCase(Locale.ROOT)))
            .map(SuppliedInput::id)
            .toList()
        : exact;
  }

  private static boolean means(SuppliedInput input, String plain) {
    return input.id().toLowerCase(Locale.ROOT).equals(plain)
        || input.path().toLowerCase(Locale.ROOT).equals(plain)
        || input.input().toLowerCase(Locale.ROOT).equals(plain);
  }
}
