package closehand.plan;

import closehand.plan.demand.Demand;
import closehand.plan.demand.WantedAction;
import closehand.plan.demand.WantedAction.Purpose;
import closehand.plan.problem.Style;
import closehand.plan.supply.SuppliedInput;
import closehand.plan.supply.Supply;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * The inputs that are of any use in one game. A stick is offered as a whole, along a line or as
 * directions, as the game needs it, so that the search need not choose between them where there is
 * nothing to choose.
 */
final class Useful {
  private static final Set<String> DIRECTIONS = Set.of("up", "left", "down", "right");

  private final Demand demand;
  private final List<SuppliedInput> fitting;
  private final boolean byDirections;
  private final boolean steers;

  private Useful(Supply supply, Demand demand) {
    this.demand = demand;
    this.fitting = supply.inputs().stream().filter(i -> ProblemMaker.fits(i, demand)).toList();
    this.byDirections =
        demand.actions().stream().anyMatch(a -> a.style() == Style.HOLD && !a.id().equals(a.of()));
    this.steers = demand.actions().stream().anyMatch(a -> a.purpose() == Purpose.STEER);
  }

  static List<SuppliedInput> of(Supply supply, Demand demand) {
    Useful useful = new Useful(supply, demand);
    Set<String> buttons = new HashSet<>();
    supply.layers().forEach(l -> buttons.add(l.button()));
    return useful.fitting.stream()
        .filter(i -> buttons.contains(i.id()) || useful.serves(i))
        .toList();
  }

  private boolean serves(SuppliedInput input) {
    if (input.kind().equals("axis2") && !asNeeded(input)) {
      return false;
    }
    return demand.actions().stream().anyMatch(a -> serves(input, a));
  }

  private static boolean serves(SuppliedInput input, WantedAction action) {
    boolean can =
        input.can().contains(action.style())
            || (action.toggleOffered() && input.can().contains(Style.TAP));
    return can && !Impossible.unsuitable(action, input);
  }

  private boolean asNeeded(SuppliedInput stick) {
    String way = stick.input().substring(stick.input().lastIndexOf('.') + 1);
    if (DIRECTIONS.contains(way)) {
      // Whoever has a stick moves with the stick as a whole; its directions serve beside steering.
      return steers && (way.equals("up") || way.equals("down"));
    }
    boolean whole = stick.can().contains(Style.TWO_AXES);
    return whole ? !(byDirections && pointerServes()) : way.equals("across");
  }

  private boolean pointerServes() {
    return fitting.stream()
        .filter(SuppliedInput::isPointer)
        .anyMatch(
            p ->
                demand.actions().stream()
                    .filter(a -> a.style() == Style.TWO_AXES)
                    .allMatch(a -> serves(p, a)));
  }
}
