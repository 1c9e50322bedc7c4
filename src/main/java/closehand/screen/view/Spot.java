package closehand.screen.view;

/**
 * Where somebody is on a screen.
 *
 * @param chosen the item the cursor stands on, from 0
 * @param top the first line of the body that is seen, from 0
 */
public record Spot(int chosen, int top) {
  /** At the start of a screen. */
  public static final Spot START = new Spot(0, 0);
}
