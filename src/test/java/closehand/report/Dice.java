package closehand.report;

/** A seeded generator of numbers (SplitMix64: Steele, Lea, Flood 2014), so that tests repeat. */
final class Dice {
  private long state;

  Dice(long seed) {
    this.state = seed;
  }

  /** A number from 0 to {@code bound - 1}. */
  int below(int bound) {
    state += 0x9E3779B97F4A7C15L;
    long z = state;
    z = (z ^ (z >>> 30)) * 0xBF58476D1CE4E5B9L;
    z = (z ^ (z >>> 27)) * 0x94D049BB133111EBL;
    return (int) Math.floorMod(z ^ (z >>> 31), (long) bound);
  }

  /** A text of up to {@code most} characters of every kind, also broken ones. */
  String text(int most) {
    StringBuilder text = new StringBuilder();
    int length = below(most + 1);
    for (int i = 0; i < length; i++) {
      switch (below(8)) {
        case 0 -> text.append(' ');
        case 1, 2 -> text.append((char) ('a' + below(26)));
        case 3 -> text.append((char) below(0x100));
        case 4 -> text.append((char) (0x300 + below(0x70)));
        case 5 -> text.append((char) (0x2000 + below(0x70)));
        case 6 -> text.append((char) below(0x10000));
        default -> text.appendCodePoint(below(0x110000));
      }
    }
    return text.toString();
  }
}
