package closehand.plan.demand;

import closehand.plan.problem.Style;
import java.util.List;

/**
 * One thing to place on an input.
 *
 * @param id the game's action, and its direction after a dot where it has several
 * @param of the game's action
 * @param name plain words
 * @param style what the input must do
 * @param purpose what a movement is for
 * @param perMinute how often; a movement counts as part of a press
 * @param holdSeconds how long one hold counts; 0 for presses and movements
 * @param longestHoldSeconds how long one hold lasts at most as a rule
 * @param moveSeconds how long one movement lasts; 0 for presses and holds
 * @param urgency 0 to 3
 * @param importance 0 to 3
 * @param toggleOffered whether the game can switch it on and off
 * @param pointed whether it is a drag with a pointer
 * @param pressedWith ids of what must work at the same moment
 */
public record WantedAction(
    String id,
    String of,
    String name,
    Style style,
    Purpose purpose,
    double perMinute,
    double holdSeconds,
    double longestHoldSeconds,
    double moveSeconds,
    int urgency,
    int importance,
    boolean toggleOffered,
    boolean pointed,
    List<String> pressedWith) {
  public WantedAction {
    pressedWith = List.copyOf(pressedWith);
  }

  /** What a movement is for. */
  public enum Purpose {
    /** A press or a hold. */
    PRESS,
    /** Walking: a stick, never a pointer. */
    MOVE,
    /** Looking and aiming: a stick or a pointer that moves on and on. */
    AIM,
    /** Pointing at things on the screen: anything that points. */
    POINT,
    /** Steering left and right: across a stick. */
    STEER
  }

  /** The same with other partners. */
  public WantedAction with(List<String> partners) {
    return new WantedAction(
        id,
        of,
        name,
        style,
        purpose,
        perMinute,
        holdSeconds,
        longestHoldSeconds,
        moveSeconds,
        urgency,
        importance,
        toggleOffered,
        pointed,
        partners);
  }
}
