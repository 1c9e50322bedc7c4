package closehand.rules;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.NavigableSet;

/**
 * A line of numbers cut into cells, so finely that no rule can tell two numbers of one cell apart.
 * Cells are counted from 0 at the low end; a set of cells is a {@code long} with one bit a cell.
 */
final class NumberLine {
  /** Most cells a line can have; the last bit of a {@code long} stands for "does not apply". */
  static final int MOST_CELLS = 63;

  private final double[] low;
  private final double[] high;

  private NumberLine(double[] low, double[] high) {
    this.low = low;
    this.high = high;
  }

  /**
   * The line over all these values, cut at each of {@code cuts}: a cut belongs to the cell above
   * it. Cells without a value are left out.
   *
   * @throws IllegalArgumentException when more than 63 cells remain
   */
  static NumberLine of(Collection<? extends Values> members, NavigableSet<Double> cuts) {
    List<Double> lows = new ArrayList<>();
    List<Double> highs = new ArrayList<>();
    double from = Double.NEGATIVE_INFINITY;
    for (double to : cuts) {
      cell(members, from, to, lows, highs);
      from = to;
    }
    cell(members, from, Double.POSITIVE_INFINITY, lows, highs);
    if (lows.size() > MOST_CELLS) {
      throw new IllegalArgumentException("more than " + MOST_CELLS + " cells on a line of numbers");
    }
    return new NumberLine(array(lows), array(highs));
  }

  private static double[] array(List<Double> numbers) {
    double[] array = new double[numbers.size()];
    for (int i = 0; i < array.length; i++) {
      array[i] = numbers.get(i);
    }
    return array;
  }

  private static void cell(
      Collection<? extends Values> members,
      double from,
      double to,
      List<Double> lows,
      List<Double> highs) {
    double lowest = Double.POSITIVE_INFINITY;
    double highest = Double.NEGATIVE_INFINITY;
    for (Values values : members) {
      double first = values.atLeast(Math.max(from, values.minimum()));
      if (first < to) {
        lowest = Math.min(lowest, first);
        highest = Math.max(highest, values.below(to));
      }
    }
    if (lowest <= highest) {
      lows.add(lowest);
      highs.add(highest);
    }
  }

  /** How many cells. */
  int cells() {
    return low.length;
  }

  /** The smallest number of a cell. */
  double low(int cell) {
    return low[cell];
  }

  /** The largest number of a cell. */
  double high(int cell) {
    return high[cell];
  }

  /** The cell of a number; one between two cells belongs to the lower, one outside to the end. */
  int cellOf(double number) {
    int cell = 0;
    while (cell + 1 < low.length && low[cell + 1] <= number) {
      cell++;
    }
    return cell;
  }

  /** Every cell. */
  long all() {
    return (1L << low.length) - 1;
  }

  /** The cells that hold at least one of these values. */
  long cellsOf(Values values) {
    long cells = 0;
    for (int cell = 0; cell < low.length; cell++) {
      if (values.atLeast(Math.max(low[cell], values.minimum())) <= high[cell]) {
        cells |= 1L << cell;
      }
    }
    return cells;
  }

  /**
   * The cells whose numbers stand in this relation to {@code number}.
   *
   * @param operator {@code <}, {@code <=}, {@code >} or {@code >=}
   */
  long cells(String operator, double number) {
    return switch (operator) {
      case "<" -> upTo(Math.nextDown(number));
      case "<=" -> upTo(number);
      case ">" -> all() & ~upTo(number);
      case ">=" -> all() & ~upTo(Math.nextDown(number));
      default -> throw new IllegalArgumentException("no comparison of numbers: " + operator);
    };
  }

  private long upTo(double number) {
    long cells = 0;
    for (int cell = 0; cell < high.length && high[cell] <= number; cell++) {
      cells |= 1L << cell;
    }
    return cells;
  }
}
