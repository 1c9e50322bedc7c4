package closehand.plan.problem;

import java.util.List;

/**
 * What does the pressing.
 *
 * @param effectors the parts of the body that can work an input
 * @param coupled pairs that cannot be used at the same moment, such as two fingers that only bend
 *     together
 */
public record Body(List<Effector> effectors, List<Pair> coupled) {
  /** Copies the lists. */
  public Body {
    effectors = List.copyOf(effectors);
    coupled = List.copyOf(coupled);
  }
}
