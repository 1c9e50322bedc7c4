package closehand.plan.problem;

import java.util.List;

/**
 * What can be pressed, turned or spoken.
 *
 * @param devices the devices to choose from
 * @param inputs their inputs
 * @param layers second meanings of inputs while a button is held
 * @param mostParts the most parts that may be used together, 0 or more; each device says how many
 *     parts it counts for
 * @param incompatible pairs of devices that cannot be used together
 * @param exclusive pairs of inputs of which only one can be in use, such as a stick as a whole and
 *     one of its directions
 */
public record Equipment(
    List<Device> devices,
    List<Input> inputs,
    List<Layer> layers,
    int mostParts,
    List<Pair> incompatible,
    List<Pair> exclusive) {

  /** Copies the lists. */
  public Equipment {
    devices = List.copyOf(devices);
    inputs = List.copyOf(inputs);
    layers = List.copyOf(layers);
    incompatible = List.copyOf(incompatible);
    exclusive = List.copyOf(exclusive);
  }

  /** The same equipment with another number of parts allowed. */
  public Equipment withMostParts(int parts) {
    return new Equipment(devices, inputs, layers, parts, incompatible, exclusive);
  }
}
