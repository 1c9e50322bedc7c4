package closehand.rules;

import java.util.List;
import java.util.function.IntConsumer;

/**
 * A condition made out over cells. The state it is read in holds, for every slot, the set of cells
 * still possible; connectives are Kleene's strong three-valued ones (Kleene 1952, section 64).
 */
sealed interface Node {
  /** Stands in a slot when its fact does not apply; no comparison ever includes it. */
  long NOT_APPLICABLE = 1L << 63;

  /** What is known of it in this state. */
  Outcome in(long[] state);

  /** Every slot it reads. */
  void slots(IntConsumer each);

  /** What a slot's possible cells say of a test that holds in {@code cells}. */
  static Outcome compare(long possible, long cells) {
    if ((possible & cells) == 0) {
      return Outcome.FALSE;
    }
    return (possible & ~cells) == 0 ? Outcome.TRUE : Outcome.OPEN;
  }

  /** Always the same. */
  record Fixed(Outcome outcome) implements Node {
    @Override
    public Outcome in(long[] state) {
      return outcome;
    }

    @Override
    public void slots(IntConsumer each) {}
  }

  /** One comparison: holds where the slot is in one of these cells. */
  record Leaf(int slot, long cells) implements Node {
    @Override
    public Outcome in(long[] state) {
      return compare(state[slot], cells);
    }

    @Override
    public void slots(IntConsumer each) {
      each.accept(slot);
    }
  }

  /** All parts hold. */
  record All(List<Node> parts) implements Node {
    @Override
    public Outcome in(long[] state) {
      Outcome sum = Outcome.TRUE;
      for (int i = 0; i < parts.size(); i++) {
        Outcome one = parts.get(i).in(state);
        if (one == Outcome.FALSE) {
          return one;
        }
        if (one == Outcome.OPEN) {
          sum = one;
        }
      }
      return sum;
    }

    @Override
    public void slots(IntConsumer each) {
      parts.forEach(p -> p.slots(each));
    }
  }

  /** At least one part holds. */
  record Any(List<Node> parts) implements Node {
    @Override
    public Outcome in(long[] state) {
      Outcome sum = Outcome.FALSE;
      for (int i = 0; i < parts.size(); i++) {
        Outcome one = parts.get(i).in(state);
        if (one == Outcome.TRUE) {
          return one;
        }
        if (one == Outcome.OPEN) {
          sum = one;
        }
      }
      return sum;
    }

    @Override
    public void slots(IntConsumer each) {
      parts.forEach(p -> p.slots(each));
    }
  }

  /** The part does not hold. */
  record Not(Node part) implements Node {
    @Override
    public Outcome in(long[] state) {
      return part.in(state).not();
    }

    @Override
    public void slots(IntConsumer each) {
      part.slots(each);
    }
  }

  /** At least so many parts hold. */
  record AtLeast(int count, List<Node> parts) implements Node {
    @Override
    public Outcome in(long[] state) {
      int hold = 0;
      int open = 0;
      for (int i = 0; i < parts.size(); i++) {
        Outcome one = parts.get(i).in(state);
        hold += one == Outcome.TRUE ? 1 : 0;
        open += one == Outcome.OPEN ? 1 : 0;
      }
      if (hold >= count) {
        return Outcome.TRUE;
      }
      return hold + open < count ? Outcome.FALSE : Outcome.OPEN;
    }

    @Override
    public void slots(IntConsumer each) {
      parts.forEach(p -> p.slots(each));
    }
  }
}
