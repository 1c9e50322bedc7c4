package closehand.plan.problem;

import java.util.Set;

/**
 * One thing that can be worked: a button, a direction of a stick, a stick as a whole, a switch, a
 * phrase.
 *
 * @param id unique among inputs
 * @param name how it is called
 * @param device the id of its device
 * @param effector the id of the part of the body that works it
 * @param can what it can do
 * @param timeMillis from the wish to the press, 0 to 10,000
 * @param latencyMillis from the press to the effect, 0 to 10,000
 * @param effort what one press and one second of holding cost
 * @param reliabilityPerMille how many of a thousand presses are understood, 1 to 1,000
 * @param column place across the device, left to right
 * @param row place down the device, top to bottom
 * @param rocker a number shared by the directions of one cross or stick, which one finger can press
 *     together; 0 for none
 */
public record Input(
    String id,
    String name,
    String device,
    String effector,
    Set<Style> can,
    int timeMillis,
    int latencyMillis,
    Effort effort,
    int reliabilityPerMille,
    int column,
    int row,
    int rocker) {
  /** Copies the set. */
  public Input {
    can = Set.copyOf(can);
  }
}
