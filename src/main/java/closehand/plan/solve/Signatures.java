package closehand.plan.solve;

import closehand.plan.problem.Clashes;
import closehand.plan.problem.Equipment;
import closehand.plan.problem.Input;
import closehand.plan.problem.KindOfPlace;
import closehand.plan.problem.Slot;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Whether two placements clash depends only on their signatures: the effector, the cross, the layer
 * and, for an input by itself, the layers that cover it. Hundreds of placements have some twenty
 * signatures, at most 64, so clashes become one word of bits each.
 */
final class Signatures {
  /** The signature of each placement. */
  final int[] of;

  /** For each signature the set of those it clashes with, itself included where it does. */
  final long[] clashing;

  Signatures(Tables tables) {
    of = new int[tables.placement.length];
    Map<String, Input> inputs = new HashMap<>();
    Equipment equipment = tables.problem.equipment();
    equipment.inputs().forEach(i -> inputs.put(i.id(), i));
    Map<KindOfPlace, Integer> index = new HashMap<>();
    List<Slot> example = new ArrayList<>();
    for (int p = 0; p < of.length; p++) {
      Slot slot = tables.placement[p].slot();
      Integer known = index.putIfAbsent(kind(slot, inputs, equipment), example.size());
      if (known == null) {
        example.add(slot);
      }
      of[p] = known == null ? example.size() - 1 : known;
    }
    clashing = clashing(new Clashes(tables.problem), example);
  }

  private static KindOfPlace kind(Slot slot, Map<String, Input> inputs, Equipment equipment) {
    Input input = inputs.get(slot.input());
    if (input == null) {
      throw new IllegalArgumentException("unknown input " + slot.input());
    }
    return KindOfPlace.of(slot, input, equipment);
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
