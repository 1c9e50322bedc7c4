package closehand.measure.statistics;

import java.util.List;

/**
 * A straight line through points by least squares (Legendre 1805).
 *
 * @param intercept where it stands at 0
 * @param slope how much it rises with each unit
 * @param correlation how well it fits, -1 to 1 (Pearson 1895); 0 where all heights are the same
 */
public record Line(double intercept, double slope, double correlation) {
  /**
   * The line through these points.
   *
   * @param x at least two different places
   * @param y as many heights
   */
  public static Line through(List<Double> x, List<Double> y) {
    if (x.size() != y.size() || x.size() < 2) {
      throw new IllegalArgumentException("as many heights as places, at least two");
    }
    double meanX = new Sample(x).mean();
    double meanY = new Sample(y).mean();
    double xx = 0;
    double yy = 0;
    double xy = 0;
    for (int i = 0; i < x.size(); i++) {
      double dx = x.get(i) - meanX;
      double dy = y.get(i) - meanY;
      xx += dx * dx;
      yy += dy * dy;
      xy += dx * dy;
    }
    if (xx == 0) {
      throw new IllegalArgumentException("all points stand in one place");
    }
    double slope = xy / xx;
    return new Line(meanY - slope * meanX, slope, yy == 0 ? 0 : xy / Math.sqrt(xx * yy));
  }

  /** Its height at a place. */
  public double at(double x) {
    return intercept + slope * x;
  }
}
