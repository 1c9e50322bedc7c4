package closehand.plan.problem;

import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;

/** Which effectors, and which two places, cannot be used at the same moment. */
public final class Clashes {
  private final Index index;
  private final Map<String, Set<String>> coupled = new HashMap<>();

  /** The clashes of one problem. */
  public Clashes(PlanProblem problem) {
    index = new Index(problem);
    for (Pair pair : problem.body().coupled()) {
      coupled.computeIfAbsent(pair.first(), k -> new HashSet<>()).add(pair.second());
      coupled.computeIfAbsent(pair.second(), k -> new HashSet<>()).add(pair.first());
    }
  }

  /** Whether two effectors cannot work two inputs at the same moment. */
  public boolean ofEffectors(String first, String second) {
    return first.equals(second) || coupled.getOrDefault(first, Set.of()).contains(second);
  }

  /**
   * Whether two places cannot be pressed at the same moment: the same or coupled effectors (unless
   * both are directions of one cross), two different layers, a layer together with an input it
   * covers, which would change meaning, or with an input worked by the effector that holds the
   * layer.
   */
  public boolean ofSlots(Slot first, Slot second) {
    Input a = index.input(first);
    Input b = index.input(second);
    boolean sameCross = a.rocker() != 0 && a.rocker() == b.rocker();
    return (!sameCross && ofEffectors(a.effector(), b.effector()))
        || (first.layer().isPresent()
            && second.layer().isPresent()
            && !first.layer().equals(second.layer()))
        || layerDisturbs(first, second)
        || layerDisturbs(second, first);
  }

  private boolean layerDisturbs(Slot layered, Slot other) {
    if (layered.layer().isEmpty()) {
      return false;
    }
    Layer layer = index.layer(layered.layer().get());
    return index.input(other).effector().equals(index.input(layer.button()).effector())
        || (other.layer().isEmpty() && layer.covers().contains(other.input()));
  }
}
