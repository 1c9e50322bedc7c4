package closehand.plan.problem;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/** The parts of a problem by their ids. */
final class Index {
  final Map<String, Action> actions;
  final Map<String, Input> inputs;
  final Map<String, Layer> layers;
  final Map<String, Device> devices;
  final Map<String, Effector> effectors;

  Index(PlanProblem problem) {
    actions = by(problem.play().actions(), Action::id);
    inputs = by(problem.equipment().inputs(), Input::id);
    layers = by(problem.equipment().layers(), Layer::id);
    devices = by(problem.equipment().devices(), Device::id);
    effectors = by(problem.body().effectors(), Effector::id);
  }

  private static <T> Map<String, T> by(List<T> all, Function<T, String> id) {
    Map<String, T> map = new HashMap<>();
    all.forEach(t -> map.put(id.apply(t), t));
    return map;
  }

  Action action(String id) {
    return need(actions, id);
  }

  Input input(String id) {
    return need(inputs, id);
  }

  Layer layer(String id) {
    return need(layers, id);
  }

  Effector effector(String id) {
    return need(effectors, id);
  }

  Input input(Slot slot) {
    return input(slot.input());
  }

  Optional<Layer> layer(Slot slot) {
    return slot.layer().map(this::layer);
  }

  private static <T> T need(Map<String, T> map, String id) {
    T found = map.get(id);
    if (found == null) {
      throw new IllegalArgumentException("unknown id " + id);
    }
    return found;
  }
}
