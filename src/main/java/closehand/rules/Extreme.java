package closehand.rules;

import java.util.List;
import java.util.function.IntConsumer;

/**
 * The largest or smallest of several numbers on one line. Those that do not apply are left out; if
 * none applies, neither does the term.
 *
 * @param slot where it is kept
 * @param inputs the slots of the numbers
 * @param largest whether the largest is meant
 * @param line every cell of their common line
 */
record Extreme(int slot, List<Integer> inputs, boolean largest, long line) implements TermStep {

  @Override
  public void run(long[] base, long[] state) {
    long union = 0;
    long reach = line;
    boolean applies = false;
    for (int i = 0; i < inputs.size(); i++) {
      long input = state[inputs.get(i)];
      union |= input & line;
      if (input >= 0) {
        applies = true;
        reach &= largest ? from(input) : upTo(input);
      }
    }
    state[slot] = (union & reach) | (applies ? 0 : Node.NOT_APPLICABLE);
  }

  /** All cells from the lowest of these up. */
  private static long from(long cells) {
    return -Long.lowestOneBit(cells);
  }

  /** All cells up to the highest of these. */
  private static long upTo(long cells) {
    return (Long.highestOneBit(cells) << 1) - 1;
  }

  @Override
  public void reads(IntConsumer each) {
    inputs.forEach(each::accept);
  }

  /** The cells from which one number alone decides a test: the far end that holds or does not. */
  private long deciding(long cells) {
    long end = largest ? Long.highestOneBit(line) : Long.lowestOneBit(line);
    return (cells & end) != 0 ? cells & line : line & ~cells;
  }

  @Override
  public void support(long cells, Trace trace, FactSet into) {
    long deciding = deciding(cells);
    if (Node.compare(trace.cells(slot), cells) != Outcome.OPEN) {
      for (int input : inputs) {
        if (Node.compare(trace.cells(input), deciding) == Outcome.TRUE) {
          trace.support(input, cells, into);
          return;
        }
      }
    }
    inputs.forEach(input -> trace.support(input, cells, into));
  }

  @Override
  public void waits(long cells, Trace trace, FactSet into) {
    long deciding = deciding(cells);
    boolean any = false;
    for (int input : inputs) {
      if (Node.compare(trace.cells(input), deciding) == Outcome.OPEN) {
        trace.waits(input, deciding, into);
        any = true;
      }
    }
    if (any) {
      return;
    }
    for (int input : inputs) {
      long possible = trace.cells(input);
      if (possible < 0 && possible != Node.NOT_APPLICABLE) {
        trace.waits(input, possible & line, into);
      }
    }
  }
}
