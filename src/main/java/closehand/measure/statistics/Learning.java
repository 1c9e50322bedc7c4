package closehand.measure.statistics;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * How times fall with practice: the power form, first * block^-rate (Snoddy 1926; Newell and
 * Rosenbloom 1981). For a single person another form may fit better (Heathcote, Brown and Mewhort
 * 2000), so nothing is fitted to fewer than eight blocks.
 *
 * @param first the time of the first block
 * @param rate how fast it falls; 0 for no change
 */
public record Learning(double first, double rate) {
  private static final int FEWEST_BLOCKS = 8;

  /**
   * By least squares of logarithms.
   *
   * @param times of blocks in order, all above 0
   * @return empty for fewer than eight blocks
   */
  public static Optional<Learning> of(Sample times) {
    if (times.size() < FEWEST_BLOCKS) {
      return Optional.empty();
    }
    List<Double> blocks = new ArrayList<>();
    for (int i = 1; i <= times.size(); i++) {
      blocks.add(Math.log(i));
    }
    Line line = Line.through(blocks, times.values().stream().map(Math::log).toList());
    return Optional.of(new Learning(Math.exp(line.intercept()), 0 - line.slope()));
  }

  /** The time of a block, the first being 1. */
  public double at(int block) {
    return first * Math.pow(block, -rate);
  }

  /** The last block less the one before; at least two. What can be said of few blocks. */
  public static double lastChange(Sample times) {
    int size = times.size();
    return times.values().get(size - 1) - times.values().get(size - 2);
  }
}
