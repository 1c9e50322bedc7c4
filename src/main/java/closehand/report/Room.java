package closehand.report;

import java.util.List;

/**
 * How much of everything a page for the player holds.
 *
 * @param approaches ideas told in full
 * @param reasons reasons for an idea
 * @param cautionLines lines for one caution
 * @param gameSettings settings of the wanted games
 * @param sayings sentences under each topic of advice
 * @param ruledOut reasons for which ideas were ruled out
 */
record Room(
    int approaches, int reasons, int cautionLines, int gameSettings, int sayings, int ruledOut) {

  /** Lines of one A4 page in a type of 11 points. */
  static final int ONE_PAGE = 66;

  /** From roomy to tight; the first that fits one page is taken, otherwise the last. */
  static final List<Room> FROM_ROOMY_TO_TIGHT =
      List.of(
          new Room(4, 3, 3, 6, 4, 6),
          new Room(4, 2, 3, 5, 3, 5),
          new Room(4, 2, 2, 4, 2, 4),
          new Room(4, 1, 2, 4, 2, 3),
          new Room(3, 1, 2, 3, 1, 2));
}
