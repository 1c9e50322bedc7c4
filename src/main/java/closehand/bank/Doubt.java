package closehand.bank;

import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * What of a bank could not be read, so that nothing is blamed on it: one mistake of form must not
 * bring a flood of findings about everything that relies on the part it broke.
 */
public final class Doubt {
  /** Everything was read. */
  public static final Doubt NONE = new Doubt(Set.of(), List.of());

  /** The code of a problem that leaves nothing in doubt: a text for people is missing. */
  public static final String MISSING_HELP = "missing-help";

  private final Set<Catalogue> incomplete;
  private final Set<Spot> spots = new HashSet<>();

  private record Spot(String file, Path path) {}

  /**
   * Doubt about everything around a problem of form.
   *
   * @param incomplete which lists of names may lack some
   * @param form the problems of form
   */
  public Doubt(Set<Catalogue> incomplete, List<Problem> form) {
    this.incomplete = Set.copyOf(incomplete);
    for (Problem problem : form) {
      if (!problem.code().equals(MISSING_HELP)) {
        add(problem.where());
      }
    }
  }

  private void add(Where where) {
    Path at = where.path();
    while (at != null && spots.add(new Spot(where.file(), at))) {
      at = at.parent();
    }
  }

  /** Whether some of these names may be missing. */
  public boolean lacks(Catalogue catalogue) {
    return incomplete.contains(catalogue);
  }

  /** Whether anything at this place or inside it could not be read. */
  public boolean about(Where where) {
    return spots.contains(new Spot(where.file(), where.path()));
  }
}
