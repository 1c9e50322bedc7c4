package closehand.cli;

import closehand.rules.Advice;
import closehand.rules.Warning;
import java.time.Clock;
import java.time.LocalDate;
import java.util.stream.Stream;

/** The days on which somebody should look at a case again; nothing happens by itself on them. */
final class Days {
  /** How long a case is kept before somebody decides again (common practice, no source). */
  private static final int MONTHS_KEPT = 12;

  /** How long suggestions hold before they are looked at again (common practice, no source). */
  private static final int MONTHS_TO_REVIEW = 6;

  /** The same where things are changing (common practice, no source). */
  private static final int MONTHS_TO_REVIEW_CHANGING = 3;

  /** The caution that stands where things are changing. */
  private static final String CHANGING = "C-PROG";

  private Days() {}

  /** The day to decide whether a case that begins today is still needed. */
  static String keepUntil(Clock clock) {
    return LocalDate.now(clock).plusMonths(MONTHS_KEPT).toString();
  }

  /** The day of the next review of what is suggested today. */
  static String reviewOn(Clock clock, Advice advice) {
    boolean changing =
        Stream.concat(advice.stops().stream(), advice.cautions().stream())
            .map(Warning::caution)
            .anyMatch(c -> c.code().equals(CHANGING));
    int months = changing ? MONTHS_TO_REVIEW_CHANGING : MONTHS_TO_REVIEW;
    return LocalDate.now(clock).plusMonths(months).toString();
  }
}
