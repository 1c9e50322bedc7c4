package closehand.cli;

import java.time.Clock;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;

/**
 * The program with a clock that fails when it is first asked, which is when a case begins: somebody
 * types at it in {@code src/test/e2e/run} and sees what a mistake of the program's own leaves
 * behind. It is on the class path of the tests only.
 */
public final class BrokenClock extends Clock {
  /** Runs the program as its front door does. */
  public static void main(String[] arguments) {
    Surroundings here = Surroundings.ofProcess(Outlet.ofProcess());
    Surroundings broken =
        new Surroundings(
            here.input(),
            here.output(),
            here.error(),
            here.environment(),
            new BrokenClock(),
            here.typed(),
            here.characters(),
            here.secrets());
    System.exit(Closehand.run(arguments, broken));
  }

  @Override
  public Instant instant() {
    throw new IllegalStateException("the pain is 7");
  }

  @Override
  public ZoneId getZone() {
    return ZoneOffset.UTC;
  }

  @Override
  public Clock withZone(ZoneId zone) {
    return this;
  }
}
