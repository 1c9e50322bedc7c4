package closehand.plan.problem;

import java.util.List;

/**
 * A demand that a plan does not keep.
 *
 * @param kind which demand
 * @param ids what it is about, in an order that the kind tells
 */
public record Breach(Kind kind, List<String> ids) {

  /** Copies the list. */
  public Breach {
    ids = List.copyOf(ids);
  }

  /** Which demand. */
  public enum Kind {
    /** An action is placed twice: the action. */
    PLACED_TWICE,
    /** A placement that is impossible by itself: action, slot, {@link Refusal}. */
    IMPOSSIBLE,
    /** Two actions on one place: the actions, the slot. */
    SAME_PLACE,
    /** The button of a layer in use does something else as well: the action, the layer. */
    LAYER_BUTTON_TAKEN,
    /** Two layers in use have the same button: the layers. */
    LAYERS_SHARE_BUTTON,
    /** More parts than allowed: the devices in use. */
    TOO_MANY_PARTS,
    /** Two devices that cannot be used together: the devices. */
    DEVICES_INCOMPATIBLE,
    /** Two inputs of which only one can be in use: the inputs. */
    INPUTS_EXCLUSIVE,
    /** Two actions that must be possible at once: the actions. */
    CO_PRESS,
    /** An effector above its limit of presses: the effector. */
    TOO_MANY_PRESSES,
    /** An effector above its limit of holding: the effector. */
    HELD_TOO_LONG,
    /** A pinned action is not where it was pinned: the action. */
    PIN_NOT_KEPT,
    /** An action that may not be left out is left out: the action. */
    MUST_BE_PLACED
  }
}
