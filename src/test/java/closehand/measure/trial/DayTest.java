package closehand.measure.trial;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Days against Java's own calendar. */
class DayTest {
  @Test
  void everyDayIsTheOneOfJavasCalendar() {
    Random random = new Random(11);
    for (int i = 0; i < 3_000; i++) {
      LocalDate java = LocalDate.ofEpochDay(random.nextInt(120_000) - 40_000);
      Day day = Day.of(java.toString()).orElseThrow();
      assertEquals(java.toEpochDay(), day.number());
      assertEquals(java.toString(), day.iso());
      int months = random.nextInt(30);
      assertEquals(java.plusMonths(months).toString(), day.plusMonths(months).iso());
      int days = random.nextInt(400) - 200;
      assertEquals(java.plusDays(days).toString(), day.plusDays(days).iso());
    }
  }

  @Test
  void whatIsNoDayIsNone() {
    for (String text :
        new String[] {"", "2026-13-01", "2026-02-29", "2026-2-01", "01.02.2026", "2026-00-10"}) {
      assertTrue(Day.of(text).isEmpty(), text);
    }
    assertEquals("2028-02-29", Day.of("2028-02-29").orElseThrow().iso());
    assertEquals("2026-11-25", Day.ofMoment("2026-11-25T10:00:00Z").orElseThrow().iso());
    assertTrue(Day.ofMoment("soon").isEmpty());
  }
}
