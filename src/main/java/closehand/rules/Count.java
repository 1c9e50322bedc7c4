package closehand.rules;

import java.util.List;
import java.util.function.IntConsumer;

/**
 * How many answers of one list are picked, those that exclude all others not counted.
 *
 * @param slot where it is kept
 * @param options the slots of the options that count; at least one
 * @param cells the cell of each count from 0 up
 * @param all the cells of all counts
 */
record Count(int slot, List<Integer> options, List<Integer> cells, long all) implements TermStep {

  @Override
  public void run(long[] base, long[] state) {
    int fewest = 0;
    int most = 0;
    for (int i = 0; i < options.size(); i++) {
      long picked = state[options.get(i)];
      fewest += picked == Shape.YES ? 1 : 0;
      most += (picked & Shape.YES) != 0 ? 1 : 0;
    }
    long first = state[options.get(0)];
    long range = (1L << cells.get(most)) | ((1L << cells.get(most)) - (1L << cells.get(fewest)));
    state[slot] = (first == Node.NOT_APPLICABLE ? 0 : range & all) | (first & Node.NOT_APPLICABLE);
  }

  @Override
  public void reads(IntConsumer each) {
    options.forEach(each::accept);
  }

  @Override
  public void support(long cells, Trace trace, FactSet into) {
    trace.support(options.get(0), cells, into);
  }

  @Override
  public void waits(long cells, Trace trace, FactSet into) {
    trace.waits(options.get(0), cells, into);
  }
}
