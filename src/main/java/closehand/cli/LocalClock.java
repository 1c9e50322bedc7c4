package closehand.cli;

import java.time.Clock;
import java.time.Instant;
import java.time.ZoneId;

/**
 * The clock and time zone of this machine. The zone is only looked up when somebody asks for the
 * hour, since reading the tables of zones takes longer than reading somebody's answers.
 */
final class LocalClock extends Clock {
  @Override
  public ZoneId getZone() {
    return ZoneId.systemDefault();
  }

  @Override
  public Clock withZone(ZoneId zone) {
    return Clock.system(zone);
  }

  @Override
  public long millis() {
    return System.currentTimeMillis();
  }

  @Override
  public Instant instant() {
    return Instant.now();
  }
}
