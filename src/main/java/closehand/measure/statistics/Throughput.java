package closehand.measure.statistics;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * How much one way of pointing gets through in one condition (one distance, one width), speed and
 * spread in one number (ISO 9241-411; Soukoreff and MacKenzie 2004). Misses count as they fell.
 *
 * <p>For comparing two ways of pointing of one person only. No norm exists for disabled players,
 * and figures of other studies depend on their task.
 *
 * @param counted how many selections it rests on
 * @param missed how many of them fell outside the target
 * @param deviation of the selections along the way, in the unit of length
 * @param width effective width, same unit
 * @param distance effective distance, same unit
 * @param bits effective index of difficulty
 * @param seconds mean time of a selection
 */
public record Throughput(
    int counted,
    int missed,
    double deviation,
    double width,
    double distance,
    double bits,
    double seconds) {

  /** Bits each second. */
  public double bitsPerSecond() {
    return bits / seconds;
  }

  /**
   * Of selections that each began where the earlier target's middle was.
   *
   * @param targetWidth the width that was drawn
   * @param all every selection of the condition, misses too
   * @return empty where fewer than two count, or all that count fell on one spot: nothing can be
   *     told then
   */
  public static Optional<Throughput> of(double targetWidth, List<Selection> all) {
    return of(targetWidth, all, /* chain= */ false);
  }

  /**
   * Of selections in a chain, each beginning where the earlier one really fell: the way of each is
   * corrected by how far the earlier one fell behind its own target, towards which it went.
   */
  public static Optional<Throughput> ofChain(double targetWidth, List<Selection> all) {
    return of(targetWidth, all, /* chain= */ true);
  }

  private static Optional<Throughput> of(double targetWidth, List<Selection> all, boolean chain) {
    List<Double> along = new ArrayList<>();
    List<Double> distances = new ArrayList<>();
    List<Double> seconds = new ArrayList<>();
    int missed = 0;
    double before = 0;
    for (Selection one : all) {
      if (counts(one, targetWidth)) {
        along.add(one.along());
        distances.add(one.distance() + one.along() + (chain ? before : 0));
        seconds.add(one.seconds());
        missed += one.off() > targetWidth / 2 ? 1 : 0;
      }
      before = one.along();
    }
    if (along.size() < 2 || new Sample(along).deviation() == 0) {
      return Optional.empty();
    }
    double width = EffectiveWidth.of(new Sample(along));
    double distance = new Sample(distances).mean();
    return Optional.of(
        new Throughput(
            along.size(),
            missed,
            new Sample(along).deviation(),
            width,
            distance,
            Difficulty.bits(Math.max(0, distance), width),
            new Sample(seconds).mean()));
  }

  /**
   * Whether a selection was meant for its target: it went at least half the way and fell no more
   * than two widths away. Others, such as a double press, are left out (same source).
   */
  public static boolean counts(Selection one, double targetWidth) {
    return one.moved() >= one.distance() / 2 && one.off() <= 2 * targetWidth;
  }

  /**
   * Whether the selections spread less than the pointer's own steps can tell.
   *
   * @param step the smallest step the pointer is told in, such as 1 cell
   */
  public boolean isTooFine(double step) {
    return deviation < EffectiveWidth.FINEST_STEPS * step;
  }

  /** The mean over conditions, each first by itself (same source, "mean of means"). */
  public static double meanBitsPerSecond(List<Throughput> conditions) {
    return new Sample(conditions.stream().map(Throughput::bitsPerSecond).toList()).mean();
  }
}
