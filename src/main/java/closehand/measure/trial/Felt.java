package closehand.measure.trial;

import java.util.OptionalInt;

/**
 * How it feels, each from 0 (none) to 10 (the most there is), where it was said.
 *
 * @param pain pain now
 * @param effort how hard it is
 * @param tiredness tiredness now
 */
public record Felt(OptionalInt pain, OptionalInt effort, OptionalInt tiredness) {
  /** Nothing was said. */
  public static final Felt UNSAID =
      new Felt(OptionalInt.empty(), OptionalInt.empty(), OptionalInt.empty());

  /** The most of anything. */
  public static final int MOST = 10;

  /** Refuses anything outside 0 to 10. */
  public Felt {
    for (OptionalInt one : new OptionalInt[] {pain, effort, tiredness}) {
      if (one.isPresent() && (one.getAsInt() < 0 || one.getAsInt() > MOST)) {
        throw new IllegalArgumentException("from 0 to 10");
      }
    }
  }

  Felt withPain(int value) {
    return new Felt(OptionalInt.of(value), effort, tiredness);
  }

  Felt withEffort(int value) {
    return new Felt(pain, OptionalInt.of(value), tiredness);
  }

  Felt withTiredness(int value) {
    return new Felt(pain, effort, OptionalInt.of(value));
  }
}
