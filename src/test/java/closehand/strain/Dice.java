package closehand.strain;

import java.util.ArrayList;
import java.util.List;

/** Lawful presses by chance, the same for the same seed (SplitMix64, Steele et al. 2014). */
final class Dice {
  private long state;

  Dice(long seed) {
    state = seed * 0x9E3779B97F4A7C15L;
  }

  private long next() {
    state += 0x9E3779B97F4A7C15L;
    long z = state;
    z = (z ^ (z >>> 30)) * 0xBF58476D1CE4E5B9L;
    z = (z ^ (z >>> 27)) * 0x94D049BB133111EBL;
    return z ^ (z >>> 31);
  }

  /** From 0 up to, but without, 1. */
  double share() {
    return (next() >>> 11) * 0x1.0p-53;
  }

  double between(double least, double most) {
    return least + share() * (most - least);
  }

  int below(int bound) {
    return (int) Math.floorMod(next(), (long) bound);
  }

  <T> T of(List<T> some) {
    return some.get(below(some.size()));
  }

  /** A press of this body part that takes at most so many seconds of the minute. */
  Exertion press(String effector, double mostSeconds) {
    double perMinute = Math.exp(between(Math.log(0.3), Math.log(60)));
    double seconds = Math.min(between(0.05, 20), mostSeconds * share() / perMinute + 0.001);
    return new Exertion(effector, share(), perMinute, seconds, between(-60, 60));
  }

  /** Presses of one hand that fit into the minute. */
  List<Exertion> hand() {
    List<Exertion> presses = new ArrayList<>();
    int count = 1 + below(6);
    for (int i = 0; i < count; i++) {
      presses.add(press(of(List.of("R.T", "R.I", "R.M", "R.R", "R.L")), 50.0 / count));
    }
    return presses;
  }

  /** Presses of one hand, one kind a finger, that may overlap. */
  List<Exertion> busyHand() {
    List<Exertion> presses = new ArrayList<>();
    for (String finger : List.of("R.T", "R.I", "R.M", "R.R", "R.L")) {
      presses.add(press(finger, 55));
    }
    return presses;
  }
}
