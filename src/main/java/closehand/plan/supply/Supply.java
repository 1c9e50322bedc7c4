package closehand.plan.supply;

import closehand.plan.problem.Pair;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * What a player can reach and work, whatever the game.
 *
 * @param devices devices to choose from
 * @param inputs their inputs, each with one part of the body
 * @param body the parts of the body by id
 * @param coupled parts of the body that cannot press at the same moment
 * @param exclusive inputs of which only one can be in use
 * @param layers second meanings while something is held
 * @param halfParts how many halves of a part may be used together
 * @param factors how hard inputs are
 * @param textBy approaches that can write text
 * @param waitsFor facts that are not known and could add inputs, in the order looked for
 * @param measured what was measured of single inputs, by their ids; may be empty
 */
public record Supply(
    List<SuppliedDevice> devices,
    List<SuppliedInput> inputs,
    Map<String, BodyPart> body,
    List<Pair> coupled,
    List<Pair> exclusive,
    List<SuppliedLayer> layers,
    int halfParts,
    Factors factors,
    List<String> textBy,
    List<String> waitsFor,
    Map<String, Measured> measured) {
  public Supply {
    devices = List.copyOf(devices);
    inputs = List.copyOf(inputs);
    body = java.util.Collections.unmodifiableMap(new TreeMap<>(body));
    coupled = List.copyOf(coupled);
    exclusive = List.copyOf(exclusive);
    layers = List.copyOf(layers);
    textBy = List.copyOf(textBy);
    waitsFor = List.copyOf(waitsFor);
    measured = Map.copyOf(measured);
  }

  /** A supply of which nothing was measured input by input. */
  public Supply(
      List<SuppliedDevice> devices,
      List<SuppliedInput> inputs,
      Map<String, BodyPart> body,
      List<Pair> coupled,
      List<Pair> exclusive,
      List<SuppliedLayer> layers,
      int halfParts,
      Factors factors,
      List<String> textBy,
      List<String> waitsFor) {
    this(
        devices, inputs, body, coupled, exclusive, layers, halfParts, factors, textBy, waitsFor,
        Map.of());
  }

  /** The same with what was measured of single inputs. */
  public Supply with(Map<String, Measured> found) {
    return new Supply(
        devices, inputs, body, coupled, exclusive, layers, halfParts, factors, textBy, waitsFor,
        found);
  }

  /**
   * A second meaning of inputs while a button is held.
   *
   * @param id unique
   * @param button id of the input that is held
   * @param covers ids of the inputs that change meaning
   */
  public record SuppliedLayer(String id, String button, List<String> covers) {
    public SuppliedLayer {
      covers = List.copyOf(covers);
    }
  }

  /** The input with this id. */
  public Optional<SuppliedInput> input(String id) {
    return inputs.stream().filter(i -> i.id().equals(id)).findFirst();
  }

  /** The device with this id. */
  public Optional<SuppliedDevice> device(String id) {
    return devices.stream().filter(d -> d.id().equals(id)).findFirst();
  }
}
