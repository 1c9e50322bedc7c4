package closehand.screen.terminal;

import static closehand.screen.terminal.HoldGuard.Verdict.DROP;
import static closehand.screen.terminal.HoldGuard.Verdict.FIRST_BOUNCED;
import static closehand.screen.terminal.HoldGuard.Verdict.FIRST_HELD;
import static closehand.screen.terminal.HoldGuard.Verdict.PASS;
import static org.junit.jupiter.api.Assertions.assertEquals;

import closehand.screen.frame.Key;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A15: the hold guard and the bounce guard can be set, 0 is off, and drops are told once. */
class HoldGuardTest {
  private static final Key ONE = Key.of('1');
  private static final Key TWO = Key.of('2');

  /** A key held for 1.6 seconds as one terminal sent it: 660 ms, then one each 40 ms or so. */
  private static List<Long> held() {
    List<Long> times = new ArrayList<>(List.of(0L, 660L));
    for (int i = 1; i <= 23; i++) {
      times.add(660L + 40L * i + (i % 3) - 1);
    }
    return times;
  }

  private static List<HoldGuard.Verdict> judged(HoldGuard guard, Key key, List<Long> times) {
    return times.stream().map(t -> guard.judge(key, false, t)).toList();
  }

  @Test
  void aHeldKeyCountsOnceAndIsToldOnce() {
    List<HoldGuard.Verdict> verdicts = judged(new HoldGuard(750, 30), ONE, held());
    assertEquals(List.of(PASS, FIRST_HELD), verdicts.subList(0, 2));
    assertEquals(Collections.nCopies(23, DROP), verdicts.subList(2, verdicts.size()));
  }

  @Test
  void theSameKeyCountsAgainAfterItsRest() {
    HoldGuard guard = new HoldGuard(750, 30);
    assertEquals(List.of(PASS, PASS), judged(guard, ONE, List.of(0L, 750L)));
    assertEquals(List.of(FIRST_HELD, PASS), judged(guard, ONE, List.of(1499L, 2249L)));
  }

  @Test
  void anotherKeyCountsAtOnceUnlessItBounced() {
    HoldGuard guard = new HoldGuard(750, 30);
    assertEquals(PASS, guard.judge(ONE, false, 0));
    assertEquals(PASS, guard.judge(TWO, false, 30));
    assertEquals(FIRST_BOUNCED, guard.judge(ONE, false, 59));
    assertEquals(DROP, guard.judge(TWO, false, 70));
    assertEquals(PASS, guard.judge(ONE, false, 100));
  }

  @Test
  void keysThatOnlyMoveOrWriteAlwaysCount() {
    HoldGuard guard = new HoldGuard(750, 30);
    for (long time : held()) {
      assertEquals(PASS, guard.judge(Key.Named.DOWN, true, time));
    }
  }

  @Test
  void zeroIsOff() {
    HoldGuard guard = new HoldGuard(0, 0);
    assertEquals(Collections.nCopies(25, PASS), judged(guard, ONE, held()));
    assertEquals(PASS, guard.judge(TWO, false, held().get(24)));
  }

  @Test
  void theFirstKeyOfAllCountsWhateverTheClockSays() {
    assertEquals(PASS, new HoldGuard(750, 30).judge(ONE, false, 3));
    assertEquals(PASS, new HoldGuard(750, 30).judge(ONE, false, Long.MIN_VALUE));
  }
}
