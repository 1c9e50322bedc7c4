package closehand.casefile;

/**
 * Who has a case open.
 *
 * @param who the account on this machine
 * @param process the number of the process, 0 if not known
 * @param since when, as an ISO date and time with zone; empty if not known
 */
public record Holder(String who, long process, String since) {
  /** Largest text of a holder read, in bytes. */
  static final int LONGEST = 1000;

  private static final int LINES = 3;

  /** Somebody of whom nothing is known. */
  static final Holder NOBODY_KNOWN = new Holder("", 0, "");

  String text() {
    return who.replace('\n', ' ') + "\n" + process + "\n" + since + "\n";
  }

  static Holder read(String text) {
    String[] lines = text.split("\n", LINES + 1);
    if (lines.length < LINES || !isNumber(lines[1])) {
      return NOBODY_KNOWN;
    }
    return new Holder(lines[0], Long.parseLong(lines[1]), lines[2]);
  }

  private static boolean isNumber(String text) {
    return !text.isEmpty()
        && text.length() <= 18
        && text.chars().allMatch(c -> c >= '0' && c <= '9');
  }
}
