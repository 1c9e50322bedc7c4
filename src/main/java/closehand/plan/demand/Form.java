package closehand.plan.demand;

import java.util.List;

/**
 * How movements are asked for: as a stick would do them, or as directions that are pressed.
 *
 * @param moveByStick walking and steering on a stick
 * @param aimByAxis looking on a stick or pointer
 */
public record Form(boolean moveByStick, boolean aimByAxis) {
  /** Every form, the usual one first. */
  public static final List<Form> ALL =
      List.of(
          new Form(true, true),
          new Form(false, true),
          new Form(true, false),
          new Form(false, false));
}
