package closehand.plan.problem;

import java.util.List;

/**
 * What a game asks of a player.
 *
 * @param actions at most {@link PlanProblem#MOST_ACTIONS}
 * @param coPresses pairs of actions that must be possible at the same moment
 * @param conventions pairs of actions that are easier to remember side by side, or apart
 */
public record Play(List<Action> actions, List<CoPress> coPresses, List<Convention> conventions) {
  /** Copies the lists. */
  public Play {
    actions = List.copyOf(actions);
    coPresses = List.copyOf(coPresses);
    conventions = List.copyOf(conventions);
  }
}
