package closehand.screen;

import closehand.screen.view.Spot;

/**
 * A screen on the pile, and where somebody is on it.
 *
 * @param screen the screen
 * @param spot the place
 */
record Layer(Screen screen, Spot spot) {}
