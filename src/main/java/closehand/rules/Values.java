package closehand.rules;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;

/** The numbers a fact can take. */
sealed interface Values {
  /** The smallest of them that is at least {@code bound}; positive infinity if there is none. */
  double atLeast(double bound);

  /** The largest of them that is less than {@code bound}; negative infinity if there is none. */
  double below(double bound);

  /** Smallest. */
  double minimum();

  /** Largest. */
  double maximum();

  /** Most digits after the point. */
  int decimals();

  /** Each of them in order, but no more than {@code limit} and one. */
  default List<Double> upTo(int limit) {
    List<Double> all = new ArrayList<>();
    double next = minimum();
    while (next <= maximum() && all.size() <= limit) {
      all.add(next);
      next = atLeast(Math.nextUp(next));
    }
    return all;
  }

  /**
   * Every number with so many decimals from the smallest to the largest.
   *
   * @param lowest as the question states it, need not be on the grid
   * @param highest as the question states it, need not be on the grid
   * @param decimals digits after the point
   */
  record Grid(double lowest, double highest, int decimals) implements Values {
    @Override
    public double minimum() {
      return atLeast(lowest);
    }

    @Override
    public double maximum() {
      return below(Math.nextUp(highest));
    }

    @Override
    public double atLeast(double bound) {
      if (bound > highest) {
        return Double.POSITIVE_INFINITY;
      }
      double from = Math.max(bound, lowest);
      double step = Math.ceil(from * scale());
      // Multiplying rounds, so the true step may be one beside.
      while ((step - 1) / scale() >= from) {
        step--;
      }
      while (step / scale() < from) {
        step++;
      }
      return step / scale() <= highest ? step / scale() : Double.POSITIVE_INFINITY;
    }

    @Override
    public double below(double bound) {
      if (bound <= lowest) {
        return Double.NEGATIVE_INFINITY;
      }
      double to = Math.min(bound, Math.nextUp(highest));
      double step = Math.floor(to * scale());
      while ((step + 1) / scale() < to) {
        step++;
      }
      while (step / scale() >= to) {
        step--;
      }
      return step / scale() >= lowest ? step / scale() : Double.NEGATIVE_INFINITY;
    }

    private double scale() {
      double scale = 1;
      for (int i = 0; i < decimals; i++) {
        scale *= 10;
      }
      return scale;
    }
  }

  /** A few numbers in ascending order, at least one. */
  record Points(List<Double> numbers) implements Values {
    public Points {
      numbers = numbers.stream().sorted().distinct().toList();
    }

    @Override
    public int decimals() {
      return numbers.stream()
          .mapToInt(n -> Math.max(0, BigDecimal.valueOf(n).stripTrailingZeros().scale()))
          .max()
          .orElse(0);
    }

    @Override
    public double minimum() {
      return numbers.get(0);
    }

    @Override
    public double maximum() {
      return numbers.get(numbers.size() - 1);
    }

    @Override
    public double atLeast(double bound) {
      for (double number : numbers) {
        if (number >= bound) {
          return number;
        }
      }
      return Double.POSITIVE_INFINITY;
    }

    @Override
    public double below(double bound) {
      double found = Double.NEGATIVE_INFINITY;
      for (double number : numbers) {
        if (number < bound) {
          found = number;
        }
      }
      return found;
    }
  }
}
