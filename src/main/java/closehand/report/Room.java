package closehand.report;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * How much of everything a page for the player holds.
 *
 * @param ideas ideas told in full
 * @param reasons reasons for an idea
 * @param tips sentences on setting up an idea
 * @param gameSettings settings of the wanted games
 * @param sayings sentences under each topic of advice
 * @param ruledOut reasons for which ideas were ruled out, one after another in whole sentences;
 *     where all is said shortly, 0 leaves out empty lines too, and below 0 stands the barest page
 * @param lists whether settings stand in a list of their own
 */
record Room(
    int ideas, int reasons, int tips, int gameSettings, int sayings, int ruledOut, boolean lists) {

  /** Lines of one A4 page in a type of 11 points. */
  static final int ONE_PAGE = 66;

  /** Lines of one A4 page in the smallest type that is still easy to read. */
  static final int FULL_PAGE = 80;

  private static final List<Room> FROM_ROOMY_TO_TIGHT =
      List.of(
          new Room(4, 3, 2, 6, 4, 12, true),
          new Room(4, 2, 1, 5, 3, 12, true),
          new Room(4, 1, 1, 4, 2, 12, true),
          new Room(3, 1, 1, 4, 2, 12, true),
          new Room(3, 1, 0, 3, 1, 9, false),
          new Room(2, 1, 0, 3, 1, 6, false),
          new Room(2, 1, 0, 2, 0, 4, false),
          new Room(2, 1, 0, 1, 0, 3, false),
          new Room(2, 1, 0, 0, 0, 2, false),
          new Room(2, 1, 0, 0, 0, 0, false),
          new Room(2, 1, 0, 0, 0, -1, false));

  /** For a page that may be as long as it takes. */
  static final Room ROOMIEST = FROM_ROOMY_TO_TIGHT.get(0);

  /** Whether ideas go without what they cost and, where nothing can go wrong, their place. */
  boolean terse() {
    return gameSettings <= 1;
  }

  /** Whether everything is said as shortly as it can be: the last resort before a second page. */
  boolean tightest() {
    return gameSettings == 0;
  }

  /** Whether parts that belong together stand without an empty line between them. */
  boolean close() {
    return ruledOut <= 0;
  }

  /** Whether what an idea is like is told of the first one alone. */
  boolean barest() {
    return ruledOut < 0;
  }

  /**
   * The roomiest page that fits 66 lines and still has the advice of the rules; failing that, the
   * roomiest that fits 80; failing that, the tightest.
   */
  static Room fitting(Function<Room, List<Piece>> page, Glyphs glyphs) {
    Optional<Room> full = Optional.empty();
    for (Room room : FROM_ROOMY_TO_TIGHT) {
      int lines = Sheet.lines(page.apply(room), glyphs).size();
      if (lines <= ONE_PAGE && (room.sayings() > 0 || full.isEmpty())) {
        return room;
      }
      if (full.isEmpty() && lines <= FULL_PAGE) {
        full = Optional.of(room);
      }
    }
    return full.orElse(FROM_ROOMY_TO_TIGHT.get(FROM_ROOMY_TO_TIGHT.size() - 1));
  }
}
