package closehand.rules;

import java.util.List;

/**
 * Sixty-four complete sets of answers judged at once: for every slot that differs among them, and
 * every cell of it, one bit a set says whether the set is in that cell. Nothing is open here, so
 * conditions are plain yes or no and one word operation answers for all sets.
 */
final class Block {
  /** How many sets of answers. */
  static final int SETS = 64;

  private static final int LOW = 63;

  private final long[] known;
  private final long[][] cells;
  private final double[][] exact;

  /**
   * Judges on top of what is known.
   *
   * @param known the state in which differing slots are open
   */
  Block(long[] known) {
    this.known = known;
    this.cells = new long[known.length][];
    this.exact = new double[known.length][];
  }

  /** Clears the cells of a slot, to be filled with {@link #put}. */
  void vary(int slot, int size) {
    long[] masks = cells[slot];
    if (masks == null || masks.length < size) {
      cells[slot] = new long[size];
    } else {
      java.util.Arrays.fill(masks, 0);
    }
  }

  /** Puts one set of answers into a cell of a varied slot. */
  void put(int slot, int cell, int set) {
    cells[slot][cell] |= 1L << set;
  }

  /** Notes the number itself that a set of answers has in a span. */
  void put(int spanSlot, double number, int set) {
    if (exact[spanSlot] == null) {
      exact[spanSlot] = new double[SETS];
    }
    exact[spanSlot][set] = number;
  }

  /** The sets that have any cell of a slot, which is all to which it applies. */
  long applies(int slot) {
    long[] masks = cells[slot];
    if (masks == null) {
      return known[slot] == Node.NOT_APPLICABLE ? 0 : -1L;
    }
    long any = 0;
    for (long mask : masks) {
      any |= mask;
    }
    return any;
  }

  /** The sets in one cell. */
  private long cell(int slot, int cell) {
    long[] masks = cells[slot];
    if (masks != null) {
      return cell < masks.length ? masks[cell] : 0;
    }
    // What is open here and does not differ makes no difference; its lowest cell stands for it.
    return Long.numberOfTrailingZeros(known[slot]) == cell ? -1L : 0;
  }

  /** The sets for which a condition holds. */
  long holds(Node node) {
    if (node instanceof Node.Leaf leaf) {
      return leaf(leaf);
    }
    if (node instanceof Node.Not not) {
      return ~holds(not.part());
    }
    if (node instanceof Node.All all) {
      long mask = -1L;
      for (int i = 0; i < all.parts().size() && mask != 0; i++) {
        mask &= holds(all.parts().get(i));
      }
      return mask;
    }
    if (node instanceof Node.Any any) {
      long mask = 0;
      for (int i = 0; i < any.parts().size() && mask != -1L; i++) {
        mask |= holds(any.parts().get(i));
      }
      return mask;
    }
    if (node instanceof Node.Fixed fixed) {
      return fixed.outcome() == Outcome.TRUE ? -1L : 0;
    }
    Node.AtLeast atLeast = (Node.AtLeast) node;
    long[] exactly = counted(atLeast.parts().stream().mapToLong(this::holds).toArray());
    long mask = 0;
    for (int i = atLeast.count(); i < exactly.length; i++) {
      mask |= exactly[i];
    }
    return mask;
  }

  private long leaf(Node.Leaf leaf) {
    long[] masks = cells[leaf.slot()];
    if (masks == null) {
      return (Long.lowestOneBit(known[leaf.slot()]) & leaf.cells()) != 0 ? -1L : 0;
    }
    long mask = 0;
    for (long rest = leaf.cells(); rest != 0; rest &= rest - 1) {
      int cell = Long.numberOfTrailingZeros(rest);
      if (cell < masks.length) {
        mask |= masks[cell];
      }
    }
    return mask;
  }

  /** For every number of parts, the sets for which just so many hold. */
  private static long[] counted(long[] parts) {
    long[] exactly = new long[parts.length + 1];
    exactly[0] = -1L;
    for (long part : parts) {
      for (int i = exactly.length - 1; i > 0; i--) {
        exactly[i] = (exactly[i] & ~part) | (exactly[i - 1] & part);
      }
      exactly[0] &= ~part;
    }
    return exactly;
  }

  /** Works out what one step settles. */
  void run(Step step) {
    if (step instanceof Step.Gate gate) {
      gate(gate);
    } else if (step instanceof Step.Listed listed) {
      listed(listed);
    } else if (step instanceof TermStep.Derived derived) {
      long holds = holds(derived.when());
      vary(derived.slot(), 2);
      cells[derived.slot()][0] = ~holds;
      cells[derived.slot()][1] = holds;
    } else if (step instanceof Extreme extreme) {
      extreme(extreme);
    } else if (step instanceof Count count) {
      count(count);
    } else if (step instanceof Difference difference) {
      difference(difference);
    }
  }

  /** A question that does not apply is in no cell, whatever was answered. */
  private void gate(Step.Gate gate) {
    long applies = holds(gate.applies());
    Asked asked = gate.asked();
    for (int slot = asked.slot(); slot <= asked.slot() + asked.shape().width(); slot++) {
      if (cells[slot] == null) {
        int lowest = Math.min(LOW, Long.numberOfTrailingZeros(known[slot]));
        vary(slot, lowest + 1);
        cells[slot][lowest] = lowest == LOW ? 0 : -1L;
      }
      for (int cell = 0; cell < cells[slot].length; cell++) {
        cells[slot][cell] &= applies;
      }
    }
  }

  private void listed(Step.Listed listed) {
    if (known[listed.slot()] == Shape.NO) {
      return;
    }
    int genre = listed.genre().slot();
    long named = applies(genre);
    if (listed.none() != 0) {
      named &= ~cell(genre, Long.numberOfTrailingZeros(listed.none()));
    }
    vary(listed.slot(), 2);
    cells[listed.slot()][0] = ~named;
    cells[listed.slot()][1] = named;
  }

  private void extreme(Extreme extreme) {
    int size = Long.bitCount(extreme.line());
    long[] masks = new long[size];
    long left = -1L;
    for (int i = 0; i < size; i++) {
      int cell = extreme.largest() ? size - 1 - i : i;
      long any = 0;
      for (int input : extreme.inputs()) {
        any |= cell(input, cell);
      }
      masks[cell] = any & left;
      left &= ~any;
    }
    cells[extreme.slot()] = masks;
  }

  private void count(Count count) {
    List<Integer> options = count.options();
    long[] picked = options.stream().mapToLong(o -> cell(o, 1)).toArray();
    long[] exactly = counted(picked);
    long applies = applies(options.get(0));
    vary(count.slot(), Long.SIZE - Long.numberOfLeadingZeros(count.all()));
    for (int i = 0; i < exactly.length; i++) {
      cells[count.slot()][count.cells().get(i)] |= exactly[i] & applies;
    }
  }

  private void difference(Difference difference) {
    vary(difference.slot(), Long.SIZE - Long.numberOfLeadingZeros(difference.all()));
    long applies = applies(difference.first().slot()) & applies(difference.second().slot());
    for (int set = 0; set < SETS; set++) {
      if ((applies & 1L << set) != 0) {
        double gap = number(difference.first(), set) - number(difference.second(), set);
        put(difference.slot(), difference.cellOf(gap), set);
      }
    }
  }

  private double number(Difference.Input input, int set) {
    if (input instanceof Difference.Input.Exact one) {
      double[] numbers = exact[one.span()];
      return numbers == null ? input.least(known) : numbers[set];
    }
    NumberLine line = ((Difference.Input.ByCell) input).line();
    for (int cell = 0; cell < line.cells(); cell++) {
      if ((cell(input.slot(), cell) & 1L << set) != 0) {
        return line.low(cell);
      }
    }
    return input.least(known);
  }
}
