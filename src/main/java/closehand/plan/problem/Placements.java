package closehand.plan.problem;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * A plan: which actions sit where. What is not named is left out.
 *
 * @param list at most one placement an action, in the order of action ids
 */
public record Placements(List<Placement> list) {

  /** Nothing placed. */
  public static final Placements NONE = new Placements(List.of());

  /** Puts the list in order. */
  public Placements {
    list = list.stream().sorted(Comparator.comparing(Placement::action)).toList();
  }

  /** Where an action sits, if it is placed. */
  public Optional<Placement> of(String action) {
    return list.stream().filter(p -> p.action().equals(action)).findFirst();
  }
}
