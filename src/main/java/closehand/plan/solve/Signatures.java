package closehand.plan.solve;

import closehand.plan.problem.Clashes;
import closehand.plan.problem.Equipment;
import closehand.plan.problem.Input;
import closehand.plan.problem.Layer;
import closehand.plan.problem.Slot;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Whether two placements clash depends only on their signatures: the effector, the cross, the layer
 * and, for an input by itself, the layers that cover it. Hundreds of placements have some twenty
 * signatures, so clashes become one word of bits each.
 */
final class Signatures {
  /** The most signatures that fit into one word of bits. */
  static final int MOST = 64;

  /** The signature of each placement. */
  final int[] of;

  /** For each signature the set of those it clashes with, itself included where it does. */
  final long[] clashing;

  private record Signature(
      String effector, int rocker, Optional<String> layer, List<String> covering) {}

  Signatures(Tables tables) {
    of = new int[tables.placement.length];
    Map<String, Input> inputs = new HashMap<>();
    Equipment equipment = tables.problem.equipment();
    equipment.inputs().forEach(i -> inputs.put(i.id(), i));
    Map<Signature, Integer> index = new HashMap<>();
    List<Slot> example = new ArrayList<>();
    for (int p = 0; p < of.length; p++) {
      Slot slot = tables.placement[p].slot();
      Integer known = index.putIfAbsent(signature(slot, inputs, equipment), example.size());
      if (known == null) {
        example.add(slot);
      }
      of[p] = known == null ? example.size() - 1 : known;
    }
    if (example.size() > MOST) {
      throw new IllegalArgumentException(example.size() + " signatures, at most " + MOST);
    }
    clashing = clashing(new Clashes(tables.problem), example);
  }

  private static Signature signature(Slot slot, Map<String, Input> inputs, Equipment equipment) {
    Input input = inputs.get(slot.input());
    if (input == null) {
      throw new IllegalArgumentException("unknown input " + slot.input());
    }
    List<String> covering =
        slot.layer().isPresent()
            ? List.of()
            : equipment.layers().stream()
                .filter(l -> l.covers().contains(slot.input()))
                .map(Layer::id)
                .toList();
    return new Signature(input.effector(), input.rocker(), slot.layer(), covering);
  }

  private static long[] clashing(Clashes clashes, List<Slot> example) {
    long[] found = new long[example.size()];
    for (int i = 0; i < found.length; i++) {
      for (int j = 0; j < found.length; j++) {
        if (clashes.ofSlots(example.get(i), example.get(j))) {
          found[i] |= 1L << j;
        }
      }
    }
    return found;
  }

  int count() {
    return clashing.length;
  }

  boolean clash(int first, int second) {
    return (clashing[first] >> second & 1) != 0;
  }
}
