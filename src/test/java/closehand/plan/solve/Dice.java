package closehand.plan.solve;

/** Numbers without pattern, the same in every run. */
final class Dice {
  private long state;

  Dice(long seed) {
    state = seed * 0x9E3779B97F4A7C15L + 0x2545F4914F6CDD1DL;
  }

  /** A number from 0 to n - 1. */
  int below(int n) {
    state = state * 6364136223846793005L + 1442695040888963407L;
    return (int) ((state >>> 33) % n);
  }

  int from(int least, int most) {
    return least + below(most - least + 1);
  }

  boolean oneIn(int n) {
    return below(n) == 0;
  }
}
