package closehand.plan;

import closehand.bank.PlanFigures;
import closehand.plan.demand.WantedAction;
import closehand.plan.problem.Effort;
import closehand.plan.problem.PairEffort;
import closehand.plan.problem.Style;
import closehand.plan.supply.BodyPart;
import closehand.plan.supply.Factors;
import closehand.plan.supply.SuppliedInput;
import closehand.plan.supply.Supply;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * What each action costs on each input: importance times the product of factors, times presses and
 * seconds held.
 *
 * <pre>
 * points a minute = pointsPerPress v M n + pointsPerHeldSecond v M q
 * </pre>
 *
 * <p>with n presses and q seconds a minute, v by importance and M the product of the factors; from
 * the last-resort factor on it costs a multiple. The press at the pointer costs extra where it is
 * not on a main button, and so does what the game needs on a spoken word that is often misheard.
 */
final class Efforts {
  private static final double OFTEN = 10;
  private static final int MUST = 3;

  /** From here on spoken commands do for more than what cannot lose a game: practice estimate. */
  private static final int WELL_HEARD_PER_MILLE = 900;

  private final PlanFigures.Effort figures;
  private final double movementCountsAs;
  private final int usualPoints;
  private final Supply supply;

  Efforts(PlanFigures figures, Supply supply) {
    this.figures = figures.effort();
    this.usualPoints = figures.prices().usualPoints();
    this.movementCountsAs = figures.demand().movementCountsAs();
    this.supply = supply;
  }

  /** The efforts of all pairs that the input could serve at all. */
  List<PairEffort> pairs(List<WantedAction> actions, List<SuppliedInput> inputs) {
    Set<String> layerButtons = new HashSet<>();
    supply.layers().forEach(l -> layerButtons.add(l.button()));
    List<PairEffort> pairs = new ArrayList<>();
    for (WantedAction action : actions) {
      for (SuppliedInput input : inputs) {
        boolean serves =
            input.can().contains(action.style())
                || (action.toggleOffered() && input.can().contains(Style.TAP))
                || layerButtons.contains(input.id());
        if (serves) {
          pairs.add(pair(action, input));
        }
      }
    }
    return pairs;
  }

  private PairEffort pair(WantedAction action, SuppliedInput input) {
    double factor = factor(action, input).value();
    double times = factor * (factor >= figures.lastResortFrom() ? figures.lastResortTimes() : 1);
    double weight = figures.importanceTimes().get(action.importance()) * times;
    double once = figures.pointsPerPress() / (action.style().isAxis() ? movementCountsAs : 1);
    double press = weight * (once + action.moveSeconds() * figures.pointsPerHeldSecond());
    double hold = weight * figures.pointsPerHeldSecond();
    int milliPress = (int) Math.min(Effort.MOST, Math.round(1000 * press));
    int milliHold = (int) Math.min(Effort.MOST, Math.round(1000 * hold));
    double beyond =
        action.perMinute() * (press - milliPress / 1000.0)
            + action.perMinute() * action.holdSeconds() * (hold - milliHold / 1000.0);
    boolean elsewhere = action.id().endsWith(".press") && !input.input().equals("main");
    double usual = elsewhere || mayGoUnheard(action, input) ? usualPoints : 0;
    int extra = (int) Math.max(0, Math.min(1_000_000, Math.round(beyond + usual)));
    return new PairEffort(action.id(), input.id(), new Effort(milliPress, milliHold), extra);
  }

  /** A spoken word that is often misheard is no good place for what a game cannot do without. */
  private boolean mayGoUnheard(WantedAction action, SuppliedInput input) {
    BodyPart part = supply.body().get(input.effector());
    return action.importance() == MUST
        && input.kind().equals("phrase")
        && part != null
        && part.reliabilityPerMille() < WELL_HEARD_PER_MILLE;
  }

  /** How hard this action is on this input, and by which rules. */
  Factors.Factor factor(WantedAction action, SuppliedInput input) {
    BodyPart part = supply.body().get(input.effector());
    Set<String> uses = new HashSet<>(input.uses());
    if (!action.pointed()) {
      uses.remove("drag");
    }
    if (action.style() == Style.HOLD && !action.toggleOffered()) {
      uses.add("hold");
      if (action.longestHoldSeconds() >= figures.longHoldSeconds()) {
        uses.add("longHold");
      }
    }
    if (action.perMinute() > OFTEN && !action.style().isAxis()) {
      uses.add("repeat");
    }
    if (supply.layers().stream().anyMatch(l -> l.button().equals(input.id()))) {
      uses.add("layerHold");
    }
    boolean firm = part != null && part.firm();
    return supply.factors().of(input.effector(), uses, input.ownFactor(), firm);
  }
}
