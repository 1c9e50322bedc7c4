package closehand.measure.practice;

/**
 * Numbers that look drawn but follow from a seed, so that the same run can be had again: SplitMix64
 * (Steele, Lea and Flood 2014, "Fast splittable pseudorandom number generators").
 */
public final class Chance {
  private static final long STEP = 0x9E3779B97F4A7C15L;
  private static final double UNIT = 0x1.0p-53;

  private long state;

  /** Begins with a seed. */
  public Chance(long seed) {
    state = seed;
  }

  private long next() {
    state += STEP;
    long z = state;
    z = (z ^ (z >>> 30)) * 0xBF58476D1CE4E5B9L;
    z = (z ^ (z >>> 27)) * 0x94D049BB133111EBL;
    return z ^ (z >>> 31);
  }

  /** A number from 0 to below 1. */
  public double unit() {
    return (next() >>> 11) * UNIT;
  }

  /** A whole number from 0 to below this, which is at least 1. */
  public int below(int bound) {
    return (int) (unit() * bound);
  }

  /** A number around 0 with a standard deviation of 1 (Box and Muller 1958). */
  public double normal() {
    double radius = Math.sqrt(-2 * Math.log(1 - unit()));
    return radius * Math.cos(2 * Math.PI * unit());
  }
}
