package closehand.measure.statistics;

import java.util.List;

/**
 * Whether two rows rise together (Kendall 1938; ties as in Kendall 1970).
 *
 * @param rising pairs of places in which both rows rise or both fall, less those in which they part
 * @param tau from -1 to 1, corrected for equal values (tau b); 0 where a row never changes
 */
public record Kendall(int rising, double tau) {
  /** Of two rows of the same length. */
  public static Kendall of(List<Double> first, List<Double> second) {
    if (first.size() != second.size()) {
      throw new IllegalArgumentException("two rows of the same length");
    }
    int sum = 0;
    long firstApart = 0;
    long secondApart = 0;
    for (int i = 0; i < first.size(); i++) {
      for (int j = i + 1; j < first.size(); j++) {
        int a = Double.compare(first.get(j), first.get(i));
        int b = Double.compare(second.get(j), second.get(i));
        sum += Integer.signum(a) * Integer.signum(b);
        firstApart += a == 0 ? 0 : 1;
        secondApart += b == 0 ? 0 : 1;
      }
    }
    double most = Math.sqrt((double) firstApart * secondApart);
    return new Kendall(sum, most == 0 ? 0 : sum / most);
  }

  /** How far one row rises by itself: later values above earlier ones, less those below. */
  public static int trend(Sample row) {
    List<Double> order = new java.util.ArrayList<>();
    for (int i = 0; i < row.size(); i++) {
      order.add((double) i);
    }
    return of(order, row.values()).rising();
  }
}
