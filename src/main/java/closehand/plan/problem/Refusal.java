package closehand.plan.problem;

/** Why an action cannot be on an input, whatever the rest of the plan. */
public enum Refusal {
  /** The part of the body that works the input may not be used. */
  EFFECTOR_NOT_USABLE,
  /** The game does not offer to switch this action on and off. */
  TOGGLE_NOT_OFFERED,
  /** The input cannot do what the game wants. */
  INPUT_CANNOT,
  /** It takes longer than the game gives warning. */
  TOO_SLOW,
  /** Movements and quick repeats do not go on a layer. */
  NOT_ON_LAYER,
  /** It is held too long for a layer. */
  TOO_LONG_ON_LAYER,
  /** The finger that holds the layer, or one that bends with it, would have to press. */
  LAYER_HOLDER_NEEDED,
  /** The layer does not cover the input, or the input is itself the button of a layer. */
  NOT_COVERED,
  /** This action alone goes above what the part of the body may do in a minute. */
  LOAD_TOO_HIGH,
  /** Somebody decided against it. */
  BANNED
}
