package closehand.plan.supply;

import closehand.plan.problem.Style;
import java.util.List;
import java.util.Set;

/**
 * One input that this player can reach and work, with the part of the body that works it.
 *
 * @param id unique in the supply
 * @param approach the approach it belongs to
 * @param input its id in that approach, with a direction after a dot for sticks
 * @param name plain words
 * @param kind the kind of input
 * @param device the device it belongs to
 * @param effector the part of the body
 * @param can what it can do
 * @param latencyMillis delay of the device
 * @param uses kinds of use that rules speak of
 * @param ownFactor the catalogue's factor on effort
 * @param speaks what a game must accept for it
 * @param needsCursor whether the game must be played with a pointer
 * @param usage USB HID usage, or empty
 * @param column place on the device
 * @param row place on the device
 * @param rocker number of the cross or stick it is a direction of, 0 for none
 */
public record SuppliedInput(
    String id,
    String approach,
    String input,
    String name,
    String kind,
    String device,
    String effector,
    Set<Style> can,
    int latencyMillis,
    Set<String> uses,
    double ownFactor,
    List<String> speaks,
    boolean needsCursor,
    String usage,
    int column,
    int row,
    int rocker) {
  public SuppliedInput {
    can = Set.copyOf(can);
    uses = Set.copyOf(uses);
    speaks = List.copyOf(speaks);
  }

  /** How reports name it: {@code APPROACH/input}. */
  public String path() {
    return approach + "/" + input;
  }

  /** Whether it is a pointer, which is also good for aiming. */
  public boolean isPointer() {
    return kind.equals("pointer");
  }
}
