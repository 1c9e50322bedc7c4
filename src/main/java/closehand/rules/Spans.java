package closehand.rules;

import closehand.bank.FactType;
import java.util.List;

/** Splits numbers whose value itself counts, since a difference reads them. */
final class Spans {
  private Spans() {}

  /** Whether more than one number is possible. */
  static boolean isWide(Asked fact, long[] base) {
    return least(fact, base) < greatest(fact, base);
  }

  private static double least(Asked fact, long[] base) {
    return Double.longBitsToDouble(base[fact.spanSlot().orElseThrow()]);
  }

  private static double greatest(Asked fact, long[] base) {
    return Double.longBitsToDouble(base[fact.spanSlot().orElseThrow() + 1]);
  }

  /** The lower and the upper half of the numbers still possible; nothing where one is left. */
  static List<long[]> split(Asked fact, long[] base) {
    FactType.Amount type = (FactType.Amount) fact.field().type();
    Values grid = new Values.Grid(type.minimum(), type.maximum(), type.decimals());
    double least = least(fact, base);
    double greatest = greatest(fact, base);
    double low = grid.below(Math.nextUp(least + (greatest - least) / 2));
    double high = grid.atLeast(Math.nextUp(low));
    if (!(low >= least && high <= greatest)) {
      return List.of();
    }
    return List.of(narrowed(fact, base, least, low), narrowed(fact, base, high, greatest));
  }

  private static long[] narrowed(Asked fact, long[] base, double least, double greatest) {
    long[] branch = base.clone();
    int span = fact.spanSlot().orElseThrow();
    branch[span] = Double.doubleToRawLongBits(least);
    branch[span + 1] = Double.doubleToRawLongBits(greatest);
    NumberLine line = ((AmountShape) fact.shape()).line();
    long cells = 0;
    for (int cell = line.cellOf(least); cell <= line.cellOf(greatest); cell++) {
      cells |= 1L << cell;
    }
    branch[fact.slot()] = cells & fact.shape().all();
    branch[fact.howSlot()] = How.state(How.GIVEN);
    return branch;
  }
}
