package closehand.rules;

/**
 * Numbers that look drawn by chance but are the same for the same seed on every machine: a 64-bit
 * counter, mixed (Steele, Lea, Flood 2014, the mixing function "variant 13").
 */
final class Mixing {
  private long counter;

  Mixing(long seed) {
    this.counter = seed;
  }

  /** The next number. */
  long next() {
    counter += 0x9E3779B97F4A7C15L;
    long mixed = counter;
    mixed = (mixed ^ (mixed >>> 30)) * 0xBF58476D1CE4E5B9L;
    mixed = (mixed ^ (mixed >>> 27)) * 0x94D049BB133111EBL;
    return mixed ^ (mixed >>> 31);
  }

  /** A number from 0 to below {@code bound}. */
  int below(int bound) {
    return (int) Long.remainderUnsigned(next(), bound);
  }

  /** The places from 0 to below {@code size} in an order by chance. */
  int[] shuffled(int size) {
    int[] order = new int[size];
    for (int i = 0; i < size; i++) {
      order[i] = i;
    }
    for (int i = size - 1; i > 0; i--) {
      int other = below(i + 1);
      int kept = order[i];
      order[i] = order[other];
      order[other] = kept;
    }
    return order;
  }
}
