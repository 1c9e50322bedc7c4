package closehand.rules;

import java.util.function.IntConsumer;

/**
 * The first whole number minus the second; does not apply when one of them does not. Every number
 * of both has a cell of its own, so the term is exact.
 */
final class Difference implements TermStep {
  private final int slot;
  private final int first;
  private final int second;
  private final int[][] cells;

  /**
   * The difference of two numbers.
   *
   * @param line the line of the term
   * @param firstLine the line of the first number
   * @param secondLine the line of the second number
   */
  Difference(
      int slot,
      int first,
      int second,
      NumberLine line,
      NumberLine firstLine,
      NumberLine secondLine) {
    this.slot = slot;
    this.first = first;
    this.second = second;
    this.cells = new int[firstLine.cells()][secondLine.cells()];
    for (int i = 0; i < firstLine.cells(); i++) {
      for (int j = 0; j < secondLine.cells(); j++) {
        cells[i][j] = line.cellOf(firstLine.low(i) - secondLine.low(j));
      }
    }
  }

  @Override
  public int slot() {
    return slot;
  }

  @Override
  public void run(long[] base, long[] state) {
    long found = (state[first] | state[second]) & Node.NOT_APPLICABLE;
    long others = state[second] & ~Node.NOT_APPLICABLE;
    for (long a = state[first] & ~Node.NOT_APPLICABLE; a != 0; a &= a - 1) {
      int[] row = cells[Long.numberOfTrailingZeros(a)];
      for (long b = others; b != 0; b &= b - 1) {
        found |= 1L << row[Long.numberOfTrailingZeros(b)];
      }
    }
    state[slot] = found;
  }

  @Override
  public void reads(IntConsumer each) {
    each.accept(first);
    each.accept(second);
  }

  @Override
  public void support(long wanted, Trace trace, FactSet into) {
    trace.support(first, wanted, into);
    trace.support(second, wanted, into);
  }

  @Override
  public void waits(long wanted, Trace trace, FactSet into) {
    waitsFor(first, trace, into);
    waitsFor(second, trace, into);
  }

  private static void waitsFor(int input, Trace trace, FactSet into) {
    long possible = trace.cells(input);
    if (Long.bitCount(possible) > 1) {
      trace.waits(input, Long.lowestOneBit(possible), into);
    }
  }
}
