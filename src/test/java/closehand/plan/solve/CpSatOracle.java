package closehand.plan.solve;

import closehand.plan.problem.Action;
import closehand.plan.problem.Convention;
import closehand.plan.problem.Device;
import closehand.plan.problem.Effector;
import closehand.plan.problem.Input;
import closehand.plan.problem.Layer;
import closehand.plan.problem.Pair;
import closehand.plan.problem.PlanProblem;
import com.google.ortools.Loader;
import com.google.ortools.sat.BoolVar;
import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.CpSolver;
import com.google.ortools.sat.CpSolverStatus;
import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;
import com.google.ortools.sat.Literal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The same model as plain clauses for a general solver, from the definition and {@link Reference}
 * alone: none of the rows, regimes or signatures of the program. Amber loads are not part of it.
 */
final class CpSatOracle {
  /** What the general solver says: least cost, and whether it was proved. */
  record Answer(long best, boolean proved) {}

  private final PlanProblem problem;
  private final Reference reference;
  private final CpModel model = new CpModel();
  private final LinearExprBuilder cost = LinearExpr.newBuilder();
  private final List<Reference.Spot> spots = new ArrayList<>();
  private final List<BoolVar> chosen = new ArrayList<>();
  private final Map<String, BoolVar> devices = new HashMap<>();
  private final Map<String, BoolVar> layers = new HashMap<>();

  private CpSatOracle(PlanProblem problem) {
    this.problem = problem;
    reference = new Reference(problem);
  }

  /** Whether the native part of the solver can be loaded on this machine. */
  static boolean isAvailable() {
    try {
      Loader.loadNativeLibraries();
      return true;
    } catch (UnsatisfiedLinkError | RuntimeException e) {
      return false;
    }
  }

  /** Solves with one worker; empty where no plan is allowed. */
  static Optional<Answer> solve(PlanProblem problem, double seconds) {
    CpSatOracle oracle = new CpSatOracle(problem);
    oracle.build();
    CpSolver solver = new CpSolver();
    solver.getParameters().setNumWorkers(1).setLinearizationLevel(2).setRandomSeed(1);
    solver.getParameters().setMaxTimeInSeconds(seconds);
    CpSolverStatus status = solver.solve(oracle.model);
    boolean found = status == CpSolverStatus.OPTIMAL || status == CpSolverStatus.FEASIBLE;
    return found
        ? Optional.of(
            new Answer(Math.round(solver.objectiveValue()), status == CpSolverStatus.OPTIMAL))
        : Optional.empty();
  }

  private void build() {
    for (Device device : problem.equipment().devices()) {
      BoolVar used = model.newBoolVar("device " + device.id());
      devices.put(device.id(), used);
      cost.addTerm(used, device.setUpPoints());
    }
    for (Layer layer : problem.equipment().layers()) {
      layers.put(layer.id(), model.newBoolVar("layer " + layer.id()));
    }
    problem.play().actions().forEach(this::action);
    places();
    equipment();
    loads();
    together();
    problem.play().conventions().forEach(this::convention);
    model.minimize(cost);
  }

  private void action(Action action) {
    List<Literal> one = new ArrayList<>();
    for (Reference.Spot spot : reference.spots(action)) {
      BoolVar x = model.newBoolVar(spot.placement().toString());
      spots.add(spot);
      chosen.add(x);
      one.add(x);
      cost.addTerm(x, spot.cost());
    }
    BoolVar out = model.newBoolVar("out " + action.id());
    one.add(out);
    cost.addTerm(out, problem.prices().leftOutPoints().get(action.importance()));
    model.addExactlyOne(one);
  }

  private void places() {
    Map<Object, List<Literal>> bySlot = new HashMap<>();
    for (int p = 0; p < spots.size(); p++) {
      Reference.Spot spot = spots.get(p);
      bySlot.computeIfAbsent(spot.placement().slot(), k -> new ArrayList<>()).add(chosen.get(p));
      model.addImplication(chosen.get(p), device(spot.input()));
      if (spot.layer().isPresent()) {
        model.addImplication(chosen.get(p), layer(spot.layer().get()));
      }
      for (Layer layer : problem.equipment().layers()) {
        if (layer.button().equals(spot.input().id()) && !spot.onLayer()) {
          model.addAtMostOne(List.of(chosen.get(p), layer(layer)));
        }
      }
    }
    bySlot.values().forEach(model::addAtMostOne);
  }

  private BoolVar device(Input input) {
    return Optional.ofNullable(devices.get(input.device())).orElseThrow();
  }

  private BoolVar layer(Layer layer) {
    return Optional.ofNullable(layers.get(layer.id())).orElseThrow();
  }

  private Input input(String id) {
    return problem.equipment().inputs().stream()
        .filter(i -> i.id().equals(id))
        .findFirst()
        .orElseThrow();
  }

  private void equipment() {
    LinearExprBuilder parts = LinearExpr.newBuilder();
    for (Device d : problem.equipment().devices()) {
      parts.addTerm(Optional.ofNullable(devices.get(d.id())).orElseThrow(), d.parts());
    }
    model.addLessOrEqual(parts, problem.equipment().mostParts());
    for (Pair pair : problem.equipment().incompatible()) {
      model.addAtMostOne(
          List.of(
              Optional.ofNullable(devices.get(pair.first())).orElseThrow(),
              Optional.ofNullable(devices.get(pair.second())).orElseThrow()));
    }
    List<Layer> all = problem.equipment().layers();
    for (int l = 0; l < all.size(); l++) {
      model.addImplication(layer(all.get(l)), device(input(all.get(l).button())));
      for (int k = 0; k < l; k++) {
        if (all.get(k).button().equals(all.get(l).button())) {
          model.addAtMostOne(List.of(layer(all.get(k)), layer(all.get(l))));
        }
      }
    }
    for (Pair pair : problem.equipment().exclusive()) {
      for (BoolVar one : uses(pair.first())) {
        for (BoolVar other : uses(pair.second())) {
          model.addAtMostOne(List.of(one, other));
        }
      }
    }
  }

  private List<BoolVar> uses(String input) {
    List<BoolVar> found = new ArrayList<>();
    for (int p = 0; p < spots.size(); p++) {
      if (spots.get(p).input().id().equals(input)) {
        found.add(chosen.get(p));
      }
    }
    problem.equipment().layers().stream()
        .filter(l -> l.button().equals(input))
        .forEach(l -> found.add(layer(l)));
    return found;
  }

  private void loads() {
    for (Effector e : problem.body().effectors()) {
      LinearExprBuilder presses = LinearExpr.newBuilder();
      LinearExprBuilder held = LinearExpr.newBuilder();
      for (int p = 0; p < spots.size(); p++) {
        Reference.Spot s = spots.get(p);
        boolean works = s.input().effector().equals(e.id());
        boolean holds = s.button().map(Input::effector).equals(Optional.of(e.id()));
        presses.addTerm(chosen.get(p), (works ? s.presses() : 0) + (holds ? s.presses() : 0));
        held.addTerm(chosen.get(p), (works ? s.held() : 0) + (holds ? s.buttonHeld() : 0));
      }
      model.addLessOrEqual(presses, e.limit().pressesTenths());
      model.addLessOrEqual(held, e.limit().heldMillis());
    }
  }

  private void together() {
    for (int p = 0; p < spots.size(); p++) {
      for (int q = 0; q < p; q++) {
        Reference.Spot a = spots.get(p);
        Reference.Spot b = spots.get(q);
        if (!a.action().equals(b.action())
            && reference.mustBeTogether(a.action(), b.action())
            && reference.clash(a, b)) {
          model.addAtMostOne(List.of(chosen.get(p), chosen.get(q)));
        }
      }
    }
  }

  /** One number of steps a convention: at least the steps of the pair, whichever was chosen. */
  private void convention(Convention convention) {
    IntVar steps = model.newIntVar(0, 4, convention.toString());
    cost.addTerm(steps, convention.weightPoints());
    for (int p = 0; p < spots.size(); p++) {
      if (spots.get(p).action().id().equals(convention.first())) {
        LinearExprBuilder needed = LinearExpr.newBuilder();
        for (int q = 0; q < spots.size(); q++) {
          if (spots.get(q).action().id().equals(convention.second())) {
            needed.addTerm(
                chosen.get(q), Reference.steps(convention.kind(), spots.get(p), spots.get(q)));
          }
        }
        needed.addTerm(chosen.get(p), 4);
        needed.addTerm(steps, -1);
        model.addLessOrEqual(needed, 4);
      }
    }
  }
}
