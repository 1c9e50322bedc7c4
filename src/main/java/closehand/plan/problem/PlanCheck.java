package closehand.plan.problem;

import closehand.bank.Hint;
import closehand.bank.Problem;
import closehand.bank.Where;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Function;

/** Tells whether the parts of a problem fit together; nothing is thrown. */
public final class PlanCheck {
  private final PlanProblem problem;
  private final Where where;
  private final List<Problem> found = new ArrayList<>();

  private PlanCheck(PlanProblem problem, Where where) {
    this.problem = problem;
    this.where = where;
  }

  /**
   * Everything that is wrong with a problem, each with its place: {@code where} is that of the
   * whole, below it {@code actions/3}, {@code coPresses/0} and so on.
   */
  public static List<Problem> check(PlanProblem problem, Where where) {
    PlanCheck check = new PlanCheck(problem, where);
    check.play();
    check.equipment();
    check.body();
    check.prices();
    check.wishes();
    if (check.found.isEmpty()) {
      check.kindsOfPlace();
    }
    return Problem.inLineOrder(check.found);
  }

  private void kindsOfPlace() {
    int kinds = KindOfPlace.all(problem).size();
    if (kinds > PlanProblem.MOST_KINDS_OF_PLACE) {
      error(
          where.child("inputs"),
          "too-many-kinds-of-place",
          kinds
              + " combinations of body part, cross and layer; a plan can have "
              + PlanProblem.MOST_KINDS_OF_PLACE
              + ".",
          "Leave out layers or devices that matter least.");
    }
  }

  private void play() {
    List<Action> actions = problem.play().actions();
    if (actions.size() > PlanProblem.MOST_ACTIONS) {
      error(
          where.child("actions"),
          "too-many-actions",
          actions.size() + " actions; a plan can have " + PlanProblem.MOST_ACTIONS + ".",
          "Leave out the actions that matter least.");
    }
    unique("actions", ids(actions, Action::id));
    for (int i = 0; i < actions.size(); i++) {
      Action action = actions.get(i);
      Where at = where.child("actions").child(i);
      range(at.child("perMinuteTenths"), action.perMinuteTenths(), 0, 6000);
      range(at.child("holdMillis"), action.holdMillis(), 0, 60_000);
      range(at.child("warningMillis"), action.warningMillis(), 0, Action.NO_HURRY);
      range(at.child("importance"), action.importance(), 0, Action.ESSENTIAL);
    }
    Set<String> known = ids(actions, Action::id);
    List<CoPress> coPresses = problem.play().coPresses();
    for (int i = 0; i < coPresses.size(); i++) {
      CoPress pair = coPresses.get(i);
      pair(where.child("coPresses").child(i), pair.first(), pair.second(), known);
    }
    List<Convention> conventions = problem.play().conventions();
    for (int i = 0; i < conventions.size(); i++) {
      Convention c = conventions.get(i);
      Where at = where.child("conventions").child(i);
      pair(at, c.first(), c.second(), known);
      range(at.child("weightPoints"), c.weightPoints(), 0, 100_000);
    }
  }

  private void equipment() {
    Equipment equipment = problem.equipment();
    Set<String> devices = ids(equipment.devices(), Device::id);
    Set<String> effectors = ids(problem.body().effectors(), Effector::id);
    Set<String> inputs = ids(equipment.inputs(), Input::id);
    if (equipment.devices().size() > PlanProblem.MOST_DEVICES) {
      error(
          where.child("devices"),
          "too-many-devices",
          equipment.devices().size()
              + " devices; a plan can have "
              + PlanProblem.MOST_DEVICES
              + ".",
          "Leave out the devices that matter least.");
    }
    unique("devices", devices, equipment.devices().size());
    unique("inputs", inputs, equipment.inputs().size());
    unique("layers", ids(equipment.layers(), Layer::id), equipment.layers().size());
    range(where.child("mostParts"), equipment.mostParts(), 0, 1000);
    for (int i = 0; i < equipment.devices().size(); i++) {
      Where at = where.child("devices").child(i);
      range(at.child("setUpPoints"), equipment.devices().get(i).setUpPoints(), 0, 1_000_000);
      range(at.child("parts"), equipment.devices().get(i).parts(), 0, 1000);
    }
    for (int i = 0; i < equipment.inputs().size(); i++) {
      input(where.child("inputs").child(i), equipment.inputs().get(i), devices, effectors);
    }
    for (int i = 0; i < equipment.layers().size(); i++) {
      Layer layer = equipment.layers().get(i);
      Where at = where.child("layers").child(i);
      known(at.child("button"), layer.button(), inputs);
      layer.covers().forEach(c -> known(at.child("covers"), c, inputs));
    }
    pairs("incompatible", equipment.incompatible(), devices);
    pairs("exclusive", equipment.exclusive(), inputs);
  }

  private void input(Where at, Input input, Set<String> devices, Set<String> effectors) {
    known(at.child("device"), input.device(), devices);
    known(at.child("effector"), input.effector(), effectors);
    range(at.child("timeMillis"), input.timeMillis(), 0, 10_000);
    range(at.child("latencyMillis"), input.latencyMillis(), 0, 10_000);
    range(at.child("reliabilityPerMille"), input.reliabilityPerMille(), 1, 1000);
    effort(at.child("effort"), input.effort());
  }

  private void effort(Where at, Effort effort) {
    range(at.child("pressMilliPoints"), effort.pressMilliPoints(), 0, Effort.MOST);
    range(at.child("holdMilliPointsPerSecond"), effort.holdMilliPointsPerSecond(), 0, Effort.MOST);
  }

  private void body() {
    List<Effector> effectors = problem.body().effectors();
    Set<String> known = ids(effectors, Effector::id);
    unique("effectors", known, effectors.size());
    for (int i = 0; i < effectors.size(); i++) {
      Where at = where.child("effectors").child(i);
      Effector effector = effectors.get(i);
      limit(at.child("limit"), effector.limit());
      effector
          .amber()
          .ifPresent(
              amber -> {
                limit(at.child("amber").child("from"), amber.from());
                range(at.child("amber"), amber.pointsPerPress(), 0, 1000);
                range(at.child("amber"), amber.pointsPerHeldSecond(), 0, 1000);
              });
    }
    pairs("coupled", problem.body().coupled(), known);
  }

  private void limit(Where at, Effector.LoadLimit limit) {
    range(at.child("pressesTenths"), limit.pressesTenths(), 0, Integer.MAX_VALUE);
    range(at.child("heldMillis"), limit.heldMillis(), 0, Integer.MAX_VALUE);
  }

  private void prices() {
    Prices prices = problem.prices();
    six("leftOutPoints", prices.leftOutPoints(), 100_000_000);
    six("missPoints", prices.missPoints(), 10_000);
    range(where.child("togglePoints"), prices.togglePoints(), 0, 1_000_000);
    range(where.child("waitPointsPerSecond"), prices.waitPointsPerSecond(), 0, 10_000);
    range(where.child("longHoldMillis"), prices.longHoldMillis(), 0, 60_000);
    Set<String> actions = ids(problem.play().actions(), Action::id);
    Set<String> inputs = ids(problem.equipment().inputs(), Input::id);
    for (int i = 0; i < prices.pairs().size(); i++) {
      PairEffort pair = prices.pairs().get(i);
      Where at = where.child("pairs").child(i);
      known(at.child("action"), pair.action(), actions);
      known(at.child("input"), pair.input(), inputs);
      effort(at.child("effort"), pair.effort());
      range(at.child("extraPoints"), pair.extraPoints(), 0, 1_000_000);
    }
  }

  private void six(String name, List<Integer> numbers, int most) {
    if (numbers.size() != Action.ESSENTIAL + 1) {
      error(
          where.child(name),
          "wrong-count",
          numbers.size() + " numbers where six are needed.",
          "Give one for each importance from 0 to 5.");
    }
    numbers.forEach(n -> range(where.child(name), n, 0, most));
  }

  private void wishes() {
    Wishes wishes = problem.wishes();
    Set<String> actions = ids(problem.play().actions(), Action::id);
    Set<String> inputs = ids(problem.equipment().inputs(), Input::id);
    Set<String> layers = ids(problem.equipment().layers(), Layer::id);
    Set<String> pinned = new HashSet<>();
    for (int i = 0; i < wishes.pins().size(); i++) {
      Wishes.Pin pin = wishes.pins().get(i);
      Where at = where.child("pins").child(i);
      known(at.child("action"), pin.action(), actions);
      slot(at, pin.slot(), inputs, layers);
      if (!pinned.add(pin.action())) {
        error(at, "pinned-twice", "\"" + pin.action() + "\" is wished twice.", "Keep one of them.");
      }
    }
    for (int i = 0; i < wishes.bans().size(); i++) {
      Where at = where.child("bans").child(i);
      known(at.child("action"), wishes.bans().get(i).action(), actions);
      known(at.child("input"), wishes.bans().get(i).input(), inputs);
    }
    wishes.mustPlace().forEach(a -> known(where.child("mustPlace"), a, actions));
    for (int i = 0; i < wishes.habits().size(); i++) {
      Wishes.Habit habit = wishes.habits().get(i);
      Where at = where.child("habits").child(i);
      known(at.child("action"), habit.action(), actions);
      slot(at, habit.slot(), inputs, layers);
      range(at.child("points"), habit.points(), 0, 1_000_000);
    }
  }

  private void slot(Where at, Slot slot, Set<String> inputs, Set<String> layers) {
    known(at.child("input"), slot.input(), inputs);
    slot.layer().ifPresent(l -> known(at.child("layer"), l, layers));
  }

  private void pairs(String name, List<Pair> pairs, Set<String> known) {
    for (int i = 0; i < pairs.size(); i++) {
      pair(where.child(name).child(i), pairs.get(i).first(), pairs.get(i).second(), known);
    }
  }

  private void pair(Where at, String first, String second, Set<String> known) {
    known(at, first, known);
    known(at, second, known);
    if (first.equals(second)) {
      error(at, "pair-with-itself", "\"" + first + "\" is paired with itself.", "Name two.");
    }
  }

  private void known(Where at, String id, Collection<String> known) {
    if (!known.contains(id)) {
      error(at, "unknown-id", "There is no \"" + id + "\".", Hint.didYouMean(id, known));
    }
  }

  private void range(Where at, int value, int least, int most) {
    if (value < least || value > most) {
      error(
          at,
          "out-of-range",
          value + " is not from " + least + " to " + most + ".",
          "Give a number in that range.");
    }
  }

  private void unique(String name, Set<String> ids, int count) {
    if (ids.size() < count) {
      error(where.child(name), "id-twice", "Two " + name + " have the same id.", "Rename one.");
    }
  }

  private void unique(String name, Set<String> ids) {
    unique(name, ids, problem.play().actions().size());
  }

  private static <T> Set<String> ids(List<T> all, Function<T, String> id) {
    Set<String> ids = new HashSet<>();
    all.forEach(t -> ids.add(id.apply(t)));
    return ids;
  }

  private void error(Where at, String code, String what, String mend) {
    found.add(Problem.error(at, code, what, mend));
  }
}
