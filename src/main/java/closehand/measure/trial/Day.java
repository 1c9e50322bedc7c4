package closehand.measure.trial;

import java.util.Optional;

/**
 * A day of the calendar, without a clock.
 *
 * @param number days since 1 January 1970
 */
public record Day(long number) implements Comparable<Day> {
  private static final String SHAPE = "0000-00-00";
  private static final int[] BEFORE_MONTH = {0, 31, 59, 90, 120, 151, 181, 212, 243, 273, 304, 334};
  private static final int MONTHS = 12;

  /** An ISO date (ISO 8601) such as 2026-12-01; nothing for any other text or no such day. */
  public static Optional<Day> of(String iso) {
    if (iso.length() != SHAPE.length()) {
      return Optional.empty();
    }
    for (int i = 0; i < iso.length(); i++) {
      boolean digit = iso.charAt(i) >= '0' && iso.charAt(i) <= '9';
      if (SHAPE.charAt(i) == '0' ? !digit : iso.charAt(i) != '-') {
        return Optional.empty();
      }
    }
    int year = Integer.parseInt(iso.substring(0, 4));
    int month = Integer.parseInt(iso.substring(5, 7));
    int day = Integer.parseInt(iso.substring(8));
    boolean real = month >= 1 && month <= MONTHS && day >= 1 && day <= length(year, month);
    return real ? Optional.of(of(year, month, day)) : Optional.empty();
  }

  /** The day of a moment such as 2026-12-01T10:00:00Z, as it was called there. */
  public static Optional<Day> ofMoment(String moment) {
    return moment.length() < SHAPE.length()
        ? Optional.empty()
        : of(moment.substring(0, SHAPE.length()));
  }

  private static Day of(int year, int month, int day) {
    long years = year - 1L;
    long days = years * 365 + years / 4 - years / 100 + years / 400 - 719_162;
    boolean leapDay = month > 2 && isLeap(year);
    return new Day(days + BEFORE_MONTH[month - 1] + (leapDay ? 1 : 0) + day - 1);
  }

  private static boolean isLeap(int year) {
    return year % 4 == 0 && (year % 100 != 0 || year % 400 == 0);
  }

  private static int length(int year, int month) {
    if (month == 2) {
      return isLeap(year) ? 29 : 28;
    }
    return month == 4 || month == 6 || month == 9 || month == 11 ? 30 : 31;
  }

  /** So many days later. */
  public Day plusDays(int days) {
    return new Day(number + days);
  }

  /** So many months later; the last day of the month where it has no such day. */
  public Day plusMonths(int months) {
    String iso = iso();
    int all =
        Integer.parseInt(iso.substring(0, 4)) * MONTHS + Integer.parseInt(iso.substring(5, 7));
    int year = (all + months - 1) / MONTHS;
    int month = (all + months - 1) % MONTHS + 1;
    int day = Math.min(Integer.parseInt(iso.substring(8)), length(year, month));
    return of(year, month, day);
  }

  /** As an ISO date. */
  public String iso() {
    int year = (int) (number / 366) + 1970;
    while (of(year + 1, 1, 1).number <= number) {
      year++;
    }
    while (of(year, 1, 1).number > number) {
      year--;
    }
    int month = MONTHS;
    while (of(year, month, 1).number > number) {
      month--;
    }
    long day = number - of(year, month, 1).number + 1;
    return padded(year, 4) + "-" + padded(month, 2) + "-" + padded((int) day, 2);
  }

  private static String padded(int value, int width) {
    String text = Integer.toString(value);
    return "0".repeat(Math.max(0, width - text.length())) + text;
  }

  @Override
  public int compareTo(Day other) {
    return Long.compare(number, other.number);
  }
}
