package closehand.measure.task;

import java.util.ArrayList;
import java.util.List;

/**
 * Taps on one key of a terminal, which tells when a key arrives and never when it is let go.
 *
 * <p>A held key looks like taps: one at once, a pause, then a steady row. So doubt spoils the go
 * rather than the count. A bounce, nearer to the tap before than 40 ms, is not counted (practice
 * estimate). People tap up to about 6 times a second, 5.7 in the mean (keyboard tapping, adults
 * without impairment, second-hand); two gaps in a row under 70 ms are therefore a key that repeats.
 * A slower repeat is known by being more even than a hand: eight gaps in a row within 3 ms of their
 * median, where practised hands vary by some 5 percent of the gap.
 *
 * @param nanos when each key arrived, in order
 */
record Taps(List<Long> nanos) {
  private static final long MILLI = 1_000_000L;

  /** Nearer than this is a bounce. */
  static final long BOUNCE_NANOS = 40 * MILLI;

  /** Two gaps in a row below this are a repeating key. */
  static final long REPEAT_NANOS = 70 * MILLI;

  /** A short gap right after a gap from here on is how a held key begins to repeat. */
  static final long DELAY_NANOS = 200 * MILLI;

  /** Shorter gaps are a bounce whatever came before. */
  static final long CERTAIN_BOUNCE_NANOS = 20 * MILLI;

  private static final int EVEN_GAPS = 8;
  private static final long EVEN_WITHIN_NANOS = 3 * MILLI;

  Taps {
    nanos = List.copyOf(nanos);
  }

  static final Taps NONE = new Taps(List.of());

  Taps with(long at) {
    List<Long> more = new ArrayList<>(nanos);
    more.add(at);
    return new Taps(more);
  }

  boolean begun() {
    return !nanos.isEmpty();
  }

  long first() {
    return nanos.get(0);
  }

  /** Whether a key was held down, or something was pasted: the count cannot be trusted. */
  boolean repeats() {
    List<Long> gaps = gaps();
    for (int i = 1; i < gaps.size(); i++) {
      boolean shortGap = gaps.get(i) < REPEAT_NANOS;
      boolean row = shortGap && gaps.get(i - 1) < REPEAT_NANOS;
      boolean begins =
          shortGap && gaps.get(i) >= CERTAIN_BOUNCE_NANOS && gaps.get(i - 1) >= DELAY_NANOS;
      if (row || begins || evenUpTo(gaps, i)) {
        return true;
      }
    }
    return false;
  }

  private static boolean evenUpTo(List<Long> gaps, int last) {
    if (last + 1 < EVEN_GAPS) {
      return false;
    }
    List<Long> some = new ArrayList<>(gaps.subList(last + 1 - EVEN_GAPS, last + 1));
    some.sort(null);
    long median = (some.get(EVEN_GAPS / 2 - 1) + some.get(EVEN_GAPS / 2)) / 2;
    return median - some.get(0) <= EVEN_WITHIN_NANOS
        && some.get(EVEN_GAPS - 1) - median <= EVEN_WITHIN_NANOS;
  }

  private List<Long> gaps() {
    List<Long> gaps = new ArrayList<>();
    for (int i = 1; i < nanos.size(); i++) {
      gaps.add(nanos.get(i) - nanos.get(i - 1));
    }
    return gaps;
  }

  /**
   * How many taps came in a stretch of time, bounces left out.
   *
   * @param from nanoseconds after the first tap, counted from there on
   * @param to nanoseconds after the first tap, not counted any more
   */
  int count(long from, long to) {
    int count = 0;
    long before = Long.MIN_VALUE / 2;
    for (long at : nanos) {
      boolean bounce = at - before < BOUNCE_NANOS;
      before = at;
      if (!bounce && at - first() >= from && at - first() < to) {
        count++;
      }
    }
    return count;
  }
}
