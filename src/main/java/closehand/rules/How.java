package closehand.rules;

import java.util.List;

/**
 * How a fact is known, as cells of its own. "Not asked" and "later" may still turn into any other;
 * each way of giving no value has a second bit beside it, so that a test can say whether it takes
 * that way as settled or as open.
 */
final class How {
  static final long NOT_ASKED = 1;
  static final long DECLINED = 2;
  static final long NOT_KNOWN = 4;
  static final long LATER = 8;
  static final long GIVEN = 16;

  private static final int OPEN_SHIFT = 8;
  private static final long WITHOUT_VALUE = NOT_ASKED | DECLINED | NOT_KNOWN | LATER;

  /** The cells where an answer exists: open until a value is given. */
  static final long EXISTS = GIVEN | WITHOUT_VALUE << OPEN_SHIFT;

  private How() {}

  /** The state of a fact that is known in this way. */
  static long state(long way) {
    return way == GIVEN ? GIVEN : way | way << OPEN_SHIFT;
  }

  /**
   * The cells where a {@code how} test holds: open while not asked or later, unless it asks for
   * just that.
   *
   * @throws IllegalArgumentException for a word that is none of the ways
   */
  static long cells(List<String> words) {
    long ways = 0;
    for (String word : words) {
      ways |= way(word);
    }
    return ways | (ways & WITHOUT_VALUE) << OPEN_SHIFT | (NOT_ASKED | LATER) << OPEN_SHIFT;
  }

  private static long way(String word) {
    return switch (word) {
      case "notAsked" -> NOT_ASKED;
      case "declined" -> DECLINED;
      case "notKnown" -> NOT_KNOWN;
      case "later" -> LATER;
      case "given" -> GIVEN;
      default -> throw new IllegalArgumentException("no way of knowing: " + word);
    };
  }
}
