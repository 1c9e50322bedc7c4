package closehand.plan.problem;

import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * What people decided themselves. The plan is made around it.
 *
 * @param pins actions that must sit on a given input
 * @param bans actions that must not sit on a given input
 * @param mustPlace ids of actions that may not be left out
 * @param habits places an action is used to; moving it away costs points
 */
public record Wishes(List<Pin> pins, List<Ban> bans, Set<String> mustPlace, List<Habit> habits) {

  /** No wishes at all. */
  public static final Wishes NONE = new Wishes(List.of(), List.of(), Set.of(), List.of());

  /** Copies the lists. */
  public Wishes {
    pins = List.copyOf(pins);
    bans = List.copyOf(bans);
    mustPlace = Set.copyOf(mustPlace);
    habits = List.copyOf(habits);
  }

  /**
   * An action that must be placed, and here.
   *
   * @param action an action id
   * @param slot the place
   * @param mode held or toggled, where that was decided too
   */
  public record Pin(String action, Slot slot, Optional<Mode> mode) {}

  /** An action that must not be on this input, on whatever layer; both by id. */
  public record Ban(String action, String input) {}

  /**
   * A place an action is used to.
   *
   * @param action an action id
   * @param slot where it was
   * @param points added when the action is placed anywhere else; 0 or more
   */
  public record Habit(String action, Slot slot, int points) {}
}
