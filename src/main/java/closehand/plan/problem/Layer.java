package closehand.plan.problem;

import java.util.List;

/**
 * A second meaning of some inputs while a button is held down.
 *
 * @param id unique among layers
 * @param button the id of the input that is held; it does nothing else while the layer is in use
 * @param covers the ids of the inputs that change meaning; those that are themselves the button of
 *     a layer are left out
 */
public record Layer(String id, String button, List<String> covers) {
  /** Copies the list. */
  public Layer {
    covers = List.copyOf(covers);
  }
}
