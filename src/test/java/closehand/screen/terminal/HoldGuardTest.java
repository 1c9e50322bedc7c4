package closehand.screen.terminal;

import static closehand.screen.terminal.HoldGuard.Verdict.DROP;
import static closehand.screen.terminal.HoldGuard.Verdict.FIRST_BOUNCED;
import static closehand.screen.terminal.HoldGuard.Verdict.FIRST_HELD;
import static closehand.screen.terminal.HoldGuard.Verdict.PASS;
import static org.junit.jupiter.api.Assertions.assertEquals;

import closehand.screen.frame.Guards;
import closehand.screen.frame.Key;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A15: the hold guard and the bounce guard can be set, 0 is off, and drops are told once. */
class HoldGuardTest {
  private static final Key ONE = Key.of('1');
  private static final Key TWO = Key.of('2');

  private final HoldGuard guard = new HoldGuard();

  /** A key held for 1.6 seconds as one terminal sent it: 660 ms, then one each 40 ms or so. */
  private static List<Long> held() {
    List<Long> times = new ArrayList<>(List.of(0L, 660L));
    for (int i = 1; i <= 23; i++) {
      times.add(660L + 40L * i + (i % 3) - 1);
    }
    return times;
  }

  private List<HoldGuard.Verdict> judged(Guards guards, List<Long> times) {
    return times.stream().map(t -> guard.judge(ONE, false, guards, t)).toList();
  }

  @Test
  void aHeldKeyCountsOnceAndIsToldOnce() {
    List<HoldGuard.Verdict> verdicts = judged(Guards.USUAL, held());
    assertEquals(List.of(PASS, FIRST_HELD), verdicts.subList(0, 2));
    assertEquals(Collections.nCopies(23, DROP), verdicts.subList(2, verdicts.size()));
  }

  @Test
  void theSameKeyCountsAgainAfterItsRest() {
    assertEquals(List.of(PASS, PASS), judged(Guards.USUAL, List.of(0L, 750L)));
    assertEquals(List.of(FIRST_HELD, PASS), judged(Guards.USUAL, List.of(1499L, 2249L)));
  }

  @Test
  void anotherKeyCountsAtOnceUnlessItBounced() {
    Guards guards = new Guards(750, 30);
    assertEquals(PASS, guard.judge(ONE, false, guards, 0));
    assertEquals(PASS, guard.judge(TWO, false, guards, 30));
    assertEquals(FIRST_BOUNCED, guard.judge(ONE, false, guards, 59));
    assertEquals(DROP, guard.judge(TWO, false, guards, 70));
    assertEquals(PASS, guard.judge(ONE, false, guards, 100));
  }

  @Test
  void keysThatOnlyMoveOrWriteAlwaysCount() {
    for (long time : held()) {
      assertEquals(PASS, guard.judge(Key.Named.DOWN, true, Guards.USUAL, time));
    }
  }

  @Test
  void zeroIsOff() {
    Guards off = new Guards(0, 0);
    assertEquals(Collections.nCopies(25, PASS), judged(off, held()));
    assertEquals(PASS, guard.judge(TWO, false, off, held().get(24)));
  }

  @Test
  void theFirstKeyOfAllCountsWhateverTheClockSays() {
    assertEquals(PASS, new HoldGuard().judge(ONE, false, Guards.USUAL, 3));
    assertEquals(PASS, new HoldGuard().judge(ONE, false, Guards.USUAL, Long.MIN_VALUE));
  }
}
