package closehand.report;

import java.util.List;

/** A date as people write it. */
final class PlainDate {
  private static final List<String> MONTHS =
      List.of(
          "January",
          "February",
          "March",
          "April",
          "May",
          "June",
          "July",
          "August",
          "September",
          "October",
          "November",
          "December");

  private static final int ISO_LENGTH = 10;

  private PlainDate() {}

  /** {@code 2026-11-05} as "5 November 2026" (ISO 8601); anything else stays as it is. */
  static String of(String isoDate) {
    if (isoDate.length() != ISO_LENGTH || isoDate.charAt(4) != '-' || isoDate.charAt(7) != '-') {
      return isoDate;
    }
    int month = number(isoDate, 5, 7);
    int day = number(isoDate, 8, ISO_LENGTH);
    boolean real = month >= 1 && month <= MONTHS.size() && day >= 1 && number(isoDate, 0, 4) >= 0;
    return real ? day + " " + MONTHS.get(month - 1) + " " + isoDate.substring(0, 4) : isoDate;
  }

  private static int number(String text, int from, int to) {
    int number = 0;
    for (int i = from; i < to; i++) {
      int digit = text.charAt(i) - '0';
      if (digit < 0 || digit > 9) {
        return -1;
      }
      number = number * 10 + digit;
    }
    return number;
  }
}
