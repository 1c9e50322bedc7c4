package closehand.screen.view;

import closehand.screen.frame.Role;

/**
 * One line of the body as it falls at one width.
 *
 * @param block which block of the content it belongs to, from 0
 * @param part which line of its block it is, from 0
 * @param stop which thing one can stand on it belongs to, from 0; -1 for none
 * @param lead what stands before the text, such as the key of an item
 * @param text the text itself
 * @param role what the text is for
 * @param tail a word behind it such as "(chosen)", or empty
 */
record Line(int block, int part, int stop, String lead, String text, Role role, String tail) {
  static final int NO_STOP = -1;

  static Line empty(int block) {
    return new Line(block, 0, NO_STOP, "", "", Role.PLAIN, "");
  }

  /** Whether the line is the first of something one can stand on. */
  boolean opens(int wanted) {
    return stop == wanted && part == 0;
  }
}
