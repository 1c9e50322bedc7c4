package closehand.plan.supply;

import closehand.plan.KnownFacts;
import closehand.plan.problem.Pair;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/**
 * Where a finger can lie at rest. A finger rests on one thing: a small joystick, a light switch or
 * a sensor, since leaving one to press another sets both off. A finger that moves only with its
 * neighbours drags them along, so where it has a switch or sensor they have none.
 */
final class OneHome {
  private static final List<String> FINGERS = List.of("I", "M", "R", "L");
  private static final Set<String> RESTED_ON = Set.of("SW_FINGER", "SW_SENSE");
  private static final String JOYSTICK = "JOY_LIGHT";
  private static final double MOVES_WITH_NEIGHBOURS = 1;

  private final KnownFacts facts;
  private final List<SuppliedInput> inputs;
  private final List<Pair> pairs = new ArrayList<>();

  private OneHome(KnownFacts facts, List<SuppliedInput> inputs) {
    this.facts = facts;
    this.inputs = inputs;
  }

  /** Pairs of inputs of which a plan uses one at most. */
  static List<Pair> of(KnownFacts facts, List<SuppliedInput> inputs) {
    OneHome home = new OneHome(facts, inputs);
    List<SuppliedInput> rested = inputs.stream().filter(OneHome::isRestedOn).toList();
    for (SuppliedInput one : rested) {
      for (SuppliedInput other : inputs) {
        if (home.twoHomes(one, other) || home.dragged(one, other)) {
          home.pairs.add(new Pair(one.id(), other.id()));
        }
      }
    }
    return List.copyOf(home.pairs);
  }

  /** The joystick's many parts stand second, so that the search asks once about the switch. */
  private boolean twoHomes(SuppliedInput one, SuppliedInput other) {
    boolean later = isRestedOn(other) && inputs.indexOf(one) < inputs.indexOf(other);
    return one.effector().equals(other.effector())
        && !one.approach().equals(other.approach())
        && (later || other.approach().equals(JOYSTICK));
  }

  private boolean dragged(SuppliedInput one, SuppliedInput other) {
    boolean bothTied = isTied(one.effector()) && isTied(other.effector());
    return isRestedOn(other)
        && areNeighbours(one.effector(), other.effector())
        && isTied(one.effector())
        && (!bothTied || inputs.indexOf(one) < inputs.indexOf(other));
  }

  private static boolean isRestedOn(SuppliedInput input) {
    return RESTED_ON.contains(input.approach()) && input.effector().length() == "L.T".length();
  }

  private static boolean areNeighbours(String one, String other) {
    int i = FINGERS.indexOf(one.substring(2));
    int j = FINGERS.indexOf(other.substring(2));
    return one.charAt(0) == other.charAt(0) && i >= 0 && j >= 0 && Math.abs(i - j) == 1;
  }

  private boolean isTied(String effector) {
    String fact = "digit." + effector.charAt(0) + ".move." + effector.substring(2);
    return effector.charAt(2) != 'T'
        && facts.number(fact).orElse(MOVES_WITH_NEIGHBOURS) <= MOVES_WITH_NEIGHBOURS;
  }
}
