package closehand.bank;

import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * Gathers what was found in the instances of templates: a mistake made once in a template is told
 * once, not for every side and digit.
 */
public final class Findings {
  private final List<Problem> all;
  private final Set<Spot> told = new HashSet<>();

  private record Spot(Where where, String code) {}

  /** Gathers into this list. */
  public Findings(List<Problem> all) {
    this.all = all;
  }

  /**
   * Adds what was found in one instance, unless the same kind of problem was found at the same
   * place in an earlier one.
   */
  public void addInstance(List<Problem> found) {
    found.stream().filter(p -> !told.contains(spot(p))).forEach(all::add);
    found.forEach(p -> told.add(spot(p)));
  }

  private static Spot spot(Problem problem) {
    return new Spot(problem.where(), problem.code());
  }
}
