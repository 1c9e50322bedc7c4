package closehand.plan.solve;

/** Numbers without pattern that are the same in every run (Marsaglia 2003, xorshift). */
final class Chance {
  private long state;

  Chance(long seed) {
    state = seed * 0x9E3779B97F4A7C15L | 1;
  }

  /** A number from 0 to n - 1. */
  int below(int n) {
    state ^= state << 13;
    state ^= state >>> 7;
    state ^= state << 17;
    return (int) ((state >>> 33) % n);
  }
}
