package closehand.plan.supply;

import closehand.plan.problem.Style;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * Second meanings of the inputs of a mouse or keypad while something else is held: only where a
 * part of the body that is not the thumb can hold for three seconds.
 */
final class Layers {
  private static final int LEAST_COVERED = 6;
  private static final int LEAST_HOLD_MILLISECONDS = 2_400;

  private Layers() {}

  /** At most one layer from elsewhere on the body, and one from a finger of the same hand. */
  static List<Supply.SuppliedLayer> of(
      List<SuppliedDevice> devices, List<SuppliedInput> inputs, Map<String, BodyPart> body) {
    List<Supply.SuppliedLayer> layers = new ArrayList<>();
    for (SuppliedDevice host : devices) {
      List<String> covered =
          inputs.stream()
              .filter(i -> i.device().equals(host.id()) && i.can().contains(Style.TAP))
              .map(SuppliedInput::id)
              .toList();
      boolean hosts =
          covered.size() >= LEAST_COVERED
              && (host.approach().startsWith("MOUSE") || host.approach().equals("KEYPAD"));
      if (hosts) {
        inputs.stream()
            .filter(i -> !i.device().equals(host.id()) && holds(i, body))
            .findFirst()
            .ifPresent(
                b -> layers.add(new Supply.SuppliedLayer(host.id() + "+held", b.id(), covered)));
      }
    }
    return layers;
  }

  private static boolean holds(SuppliedInput input, Map<String, BodyPart> body) {
    BodyPart part = body.get(input.effector());
    boolean longEnough =
        part != null
            && (part.longestHoldMillis().isEmpty()
                || part.longestHoldMillis().getAsInt() >= LEAST_HOLD_MILLISECONDS);
    return longEnough
        && input.can().contains(Style.HOLD)
        && input.kind().equals("switch")
        && !input.effector().endsWith(".T");
  }
}
