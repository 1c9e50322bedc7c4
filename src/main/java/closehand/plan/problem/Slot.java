package closehand.plan.problem;

import java.util.Optional;

/**
 * A place for one action.
 *
 * @param input an input id
 * @param layer the id of a layer that covers it, or empty for what the input does by itself
 */
public record Slot(String input, Optional<String> layer) {

  /** What an input does by itself. */
  public static Slot base(String input) {
    return new Slot(input, Optional.empty());
  }

  /** What an input does while a layer is held. */
  public static Slot on(String input, String layer) {
    return new Slot(input, Optional.of(layer));
  }

  /** {@code input} or {@code input@layer}. */
  @Override
  public String toString() {
    return input + layer.map(l -> "@" + l).orElse("");
  }
}
