package closehand.cli;

import java.time.Clock;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.time.temporal.ChronoUnit;
import java.util.Locale;

/** Moments in files and in words. */
final class Moment {
  private static final DateTimeFormatter TIME = DateTimeFormatter.ofPattern("HH:mm", Locale.ROOT);
  private static final DateTimeFormatter DAY =
      DateTimeFormatter.ofPattern("d MMMM uuuu", Locale.ENGLISH);

  /** How many characters at the beginning of a moment are its day. */
  static final int DAY_LENGTH = 10;

  private Moment() {}

  /** Now, as an ISO date and time with zone, to the second. */
  static String now(Clock clock) {
    return ZonedDateTime.now(clock)
        .truncatedTo(ChronoUnit.SECONDS)
        .format(DateTimeFormatter.ISO_OFFSET_DATE_TIME);
  }

  /** A day as people write it: "25 May 2027"; anything else stays as it is. */
  static String day(String iso) {
    try {
      return LocalDate.parse(iso).format(DAY);
    } catch (DateTimeException e) {
      return Words.clean(iso);
    }
  }

  /** A moment as people say it now: "today 14:05", "yesterday 9:30", "3 May 2026, 14:05". */
  static String words(String iso, Clock clock) {
    OffsetDateTime moment;
    try {
      moment = OffsetDateTime.parse(iso);
    } catch (DateTimeException e) {
      return "at an unknown time";
    }
    ZonedDateTime here = moment.atZoneSameInstant(clock.getZone());
    LocalDate today = LocalDate.now(clock);
    String time = here.format(TIME);
    if (here.toLocalDate().equals(today)) {
      return "today " + time;
    }
    return here.toLocalDate().equals(today.minusDays(1))
        ? "yesterday " + time
        : here.format(DAY) + ", " + time;
  }
}
