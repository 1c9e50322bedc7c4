package closehand.screen.terminal;

import closehand.screen.frame.Guards;
import closehand.screen.frame.Key;
import java.util.Optional;

/**
 * Drops what a held or bouncing key produces.
 *
 * <p>A held key sends itself again after some 250 to 1000 milliseconds and then many times a
 * second, and cannot be told from a second press at its first repeat; so the same key counts again
 * only after a pause. 660 and 40 milliseconds were measured in one terminal; other systems from
 * memory. Pure: the caller says what time it is.
 */
public final class HoldGuard {
  /** What is to be done with a key. */
  public enum Verdict {
    /** It counts. */
    PASS,
    /** It does not count because the key is held; the first of this hold. */
    FIRST_HELD,
    /** It does not count because it came too soon after another; the first in a row. */
    FIRST_BOUNCED,
    /** It does not count, and that was said already. */
    DROP
  }

  private Optional<Key> last = Optional.empty();
  private long lastMillis;
  private boolean told;

  /**
   * Judges one key.
   *
   * @param repeats whether the key may follow itself at once, because it answers nothing
   * @param guards how long keys are ignored after others
   * @param millis when it arrived, on any clock that only goes forward
   */
  public Verdict judge(Key key, boolean repeats, Guards guards, long millis) {
    boolean first = last.isEmpty();
    boolean same = last.filter(key::equals).isPresent();
    long gap = millis - lastMillis;
    last = Optional.of(key);
    lastMillis = millis;
    if (first || repeats || gap >= (same ? guards.holdMillis() : guards.bounceMillis())) {
      told = false;
      return Verdict.PASS;
    }
    if (told) {
      return Verdict.DROP;
    }
    told = true;
    return same ? Verdict.FIRST_HELD : Verdict.FIRST_BOUNCED;
  }
}
