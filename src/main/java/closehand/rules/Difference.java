package closehand.rules;

import java.util.List;
import java.util.function.IntConsumer;

/**
 * The first number minus the second; does not apply when one of them does not. Kept as the span
 * between the least and the greatest difference still possible, which is exact: a term is only ever
 * compared with one threshold at a time.
 *
 * @param slot where it is kept
 * @param first the number taken from
 * @param second the number taken away
 * @param line the line of the term
 * @param all the cells of the term
 * @param decimals digits after the point that count
 */
record Difference(int slot, Input first, Input second, NumberLine line, long all, int decimals)
    implements TermStep {

  /** Where the least and the greatest value of a number can be read. */
  sealed interface Input {
    /** Where its cells are kept. */
    int slot();

    /** The least value still possible. */
    double least(long[] state);

    /** The greatest value still possible. */
    double greatest(long[] state);

    /** An asked number, whose value itself is kept. */
    record Exact(int slot, int span) implements Input {
      @Override
      public double least(long[] state) {
        return Double.longBitsToDouble(state[span]);
      }

      @Override
      public double greatest(long[] state) {
        return Double.longBitsToDouble(state[span + 1]);
      }
    }

    /** A scale or term, each of whose numbers has a cell. */
    record ByCell(int slot, NumberLine line) implements Input {
      @Override
      public double least(long[] state) {
        return line.low(Long.numberOfTrailingZeros(state[slot]));
      }

      @Override
      public double greatest(long[] state) {
        long cells = state[slot] & ~Node.NOT_APPLICABLE;
        return line.high(63 - Long.numberOfLeadingZeros(cells));
      }
    }
  }

  @Override
  public void run(long[] base, long[] state) {
    long one = state[first.slot()];
    long other = state[second.slot()];
    if (one == Node.NOT_APPLICABLE || other == Node.NOT_APPLICABLE) {
      state[slot] = Node.NOT_APPLICABLE;
      return;
    }
    int from = line.cellOf(rounded(first.least(state) - second.greatest(state)));
    int to = line.cellOf(rounded(first.greatest(state) - second.least(state)));
    long span = (1L << to) | ((1L << to) - (1L << from));
    state[slot] = (span & all) | ((one | other) & Node.NOT_APPLICABLE);
  }

  /** The cell of one difference. */
  int cellOf(double gap) {
    return line.cellOf(rounded(gap));
  }

  private double rounded(double difference) {
    double scale = Math.pow(10, decimals);
    return Math.round(difference * scale) / scale;
  }

  @Override
  public void reads(IntConsumer each) {
    each.accept(first.slot());
    each.accept(second.slot());
  }

  @Override
  public void support(long wanted, Trace trace, FactSet into) {
    trace.support(first.slot(), wanted, into);
    trace.support(second.slot(), wanted, into);
  }

  @Override
  public void waits(long wanted, Trace trace, FactSet into) {
    for (Input input : List.of(first, second)) {
      long possible = trace.cells(input.slot());
      if (possible < 0 || trace.spread(input) > 0) {
        trace.waits(input.slot(), Long.lowestOneBit(possible), into);
      }
    }
  }
}
