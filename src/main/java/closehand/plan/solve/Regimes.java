package closehand.plan.solve;

import closehand.plan.problem.Device;
import closehand.plan.problem.Equipment;
import closehand.plan.problem.Input;
import closehand.plan.problem.Layer;
import closehand.plan.problem.Pair;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.BooleanSupplier;

/**
 * The large decisions, made first: which devices are used, which layers, and which of two inputs
 * that exclude each other. In one regime all that is left of these is a set of places and a fixed
 * set-up cost:
 *
 * <pre>
 * sum of parts(d) over devices d in use at most the parts allowed
 * d and d' not both in use when incompatible
 * the button of a layer in use does nothing else
 * </pre>
 *
 * <p>Devices that cost nothing, count for nothing and exclude nothing are always in use.
 */
final class Regimes {
  /** One set of large decisions. */
  record Regime(int number, long devices, BitSet slots, long setUp) {}

  private final Tables tables;
  private final Equipment equipment;
  private final Map<String, Integer> deviceIndex = new HashMap<>();
  private final Map<String, Integer> inputIndex = new HashMap<>();
  private final int[] inputDevice;
  private final List<Regime> found = new ArrayList<>();
  private final Set<BitSet> seen = new HashSet<>();
  private final BooleanSupplier stop;
  private final int always;

  private Regimes(Tables tables, BooleanSupplier stop, int always) {
    this.tables = tables;
    this.stop = stop;
    this.always = always;
    equipment = tables.problem.equipment();
    equipment.devices().forEach(d -> deviceIndex.put(d.id(), deviceIndex.size()));
    List<Input> inputs = equipment.inputs();
    inputDevice = new int[inputs.size()];
    for (int i = 0; i < inputDevice.length; i++) {
      inputIndex.put(inputs.get(i).id(), i);
      inputDevice[i] = deviceIndex.getOrDefault(inputs.get(i).device(), -1);
    }
  }

  /**
   * So many are looked at before anybody may stop it: nearly every problem has fewer, they take
   * some hundredths of a second, and without them there would be no plan at all to give back.
   */
  static final int ALWAYS = 512;

  /** Every regime, fewest devices first; once it is stopped, those found so far. */
  static List<Regime> of(Tables tables, BooleanSupplier stop) {
    return of(tables, stop, ALWAYS);
  }

  /** The same, not stopped before so many are found. */
  static List<Regime> of(Tables tables, BooleanSupplier stop, int always) {
    Regimes regimes = new Regimes(tables, stop, always);
    regimes.devices(0, 0, 0, 0);
    return regimes.found;
  }

  private boolean isEnough() {
    return found.size() >= always && stop.getAsBoolean();
  }

  private void devices(int d, long chosen, int parts, long setUp) {
    if (isEnough()) {
      return;
    }
    if (d == equipment.devices().size()) {
      layers(0, chosen, 0, setUp);
      return;
    }
    Device device = equipment.devices().get(d);
    boolean fits = parts + device.parts() <= equipment.mostParts() && compatible(device, chosen);
    boolean free = device.parts() == 0 && device.setUpPoints() == 0 && !mayExclude(device);
    boolean useful = isUseful(d);
    if (!free || !fits || !useful) {
      devices(d + 1, chosen, parts, setUp);
    }
    if (fits && useful) {
      devices(
          d + 1,
          chosen | 1L << d,
          parts + device.parts(),
          setUp + Tables.POINT * device.setUpPoints());
    }
  }

  private boolean isUseful(int d) {
    for (int p = 0; p < tables.placement.length; p++) {
      if ((tables.slotDevices[tables.slot[p]] >> d & 1) != 0) {
        return true;
      }
    }
    return false;
  }

  private boolean mayExclude(Device device) {
    return equipment.incompatible().stream()
        .anyMatch(p -> p.first().equals(device.id()) || p.second().equals(device.id()));
  }

  private boolean compatible(Device device, long chosen) {
    for (Pair pair : equipment.incompatible()) {
      String other =
          pair.first().equals(device.id())
              ? pair.second()
              : pair.second().equals(device.id()) ? pair.first() : "";
      Integer index = deviceIndex.get(other);
      if (index != null && (chosen >> index & 1) != 0) {
        return false;
      }
    }
    return true;
  }

  private int button(int layer) {
    return inputIndex.getOrDefault(equipment.layers().get(layer).button(), -1);
  }

  private void layers(int l, long devices, long chosen, long setUp) {
    if (l == equipment.layers().size()) {
      exclusive(devices, setUp, slots(devices, chosen), buttons(chosen));
      return;
    }
    layers(l + 1, devices, chosen, setUp);
    Layer layer = equipment.layers().get(l);
    boolean present = (devices >> inputDevice[button(l)] & 1) != 0;
    if (present && !buttons(chosen).get(button(l)) && covers(layer, devices)) {
      layers(l + 1, devices, chosen | 1L << l, setUp);
    }
  }

  private boolean covers(Layer layer, long devices) {
    return layer.covers().stream()
        .anyMatch(i -> (devices >> inputDevice[inputIndex.getOrDefault(i, 0)] & 1) != 0);
  }

  private BitSet buttons(long layers) {
    BitSet buttons = new BitSet();
    for (int l = 0; l < equipment.layers().size(); l++) {
      if ((layers >> l & 1) != 0) {
        buttons.set(button(l));
      }
    }
    return buttons;
  }

  private BitSet slots(long devices, long layers) {
    BitSet buttons = buttons(layers);
    BitSet slots = new BitSet();
    for (int s = 0; s < tables.slotInput.length; s++) {
      boolean present = (tables.slotDevices[s] & ~devices) == 0;
      int layer = tables.slotLayer[s];
      boolean reached = layer < 0 ? !buttons.get(tables.slotInput[s]) : (layers >> layer & 1) != 0;
      if (present && reached) {
        slots.set(s);
      }
    }
    return slots;
  }

  /**
   * Splits on the first pair of excluding inputs that are both still in use: without the first, or
   * with the first and without the second.
   */
  private void exclusive(long devices, long setUp, BitSet slots, BitSet kept) {
    if (isEnough()) {
      return;
    }
    for (Pair pair : equipment.exclusive()) {
      int i = inputIndex.getOrDefault(pair.first(), -1);
      int j = inputIndex.getOrDefault(pair.second(), -1);
      if ((kept.get(i) || has(slots, i)) && (kept.get(j) || has(slots, j))) {
        if (!kept.get(i)) {
          exclusive(devices, setUp, without(slots, i), kept);
        }
        if (!kept.get(j)) {
          BitSet more = (BitSet) kept.clone();
          more.set(i);
          exclusive(devices, setUp, without(slots, j), more);
        }
        return;
      }
    }
    if (seen.add(slots)) {
      found.add(new Regime(found.size(), devices, slots, setUp));
    }
  }

  private boolean has(BitSet slots, int input) {
    return slots.stream().anyMatch(s -> tables.slotInput[s] == input);
  }

  private BitSet without(BitSet slots, int input) {
    BitSet fewer = (BitSet) slots.clone();
    slots.stream().filter(s -> tables.slotInput[s] == input).forEach(fewer::clear);
    return fewer;
  }
}
