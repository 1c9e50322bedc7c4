package closehand.plan.demand;

import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * What one wanted game asks.
 *
 * @param game its place in the interview, from 0
 * @param genre its kind
 * @param title what the player or the bank calls it
 * @param actions what is to be placed
 * @param settled what needs no input of its own
 * @param accepts what the game takes: mouse, keyboard, pad, touch; empty where nobody knows
 * @param cursor whether it is played with a pointer, where somebody knows
 * @param automation whether sequences on one button are allowed
 * @param waitsFor facts about the game that are not known
 */
public record Demand(
    int game,
    String genre,
    String title,
    List<WantedAction> actions,
    List<Settled> settled,
    Set<String> accepts,
    Optional<Boolean> cursor,
    boolean automation,
    List<String> waitsFor) {
  public Demand {
    actions = List.copyOf(actions);
    settled = List.copyOf(settled);
    accepts = Set.copyOf(accepts);
    waitsFor = List.copyOf(waitsFor);
  }

  /** The action with this id. */
  public Optional<WantedAction> action(String id) {
    return actions.stream().filter(a -> a.id().equals(id)).findFirst();
  }

  /** Whether the game takes any of these. */
  public boolean takes(List<String> any) {
    return accepts.isEmpty() || any.contains("any") || any.stream().anyMatch(accepts::contains);
  }
}
