package closehand.rules;

import java.util.function.IntConsumer;

/** Works out one term, and says which facts it rests on or waits for. */
sealed interface TermStep extends Step permits TermStep.Derived, Extreme, Count, Difference {
  /** Where the term is kept. */
  int slot();

  /** Adds the facts that settle a test of this term, or those known so far. */
  void support(long cells, Trace trace, FactSet into);

  /** Adds the facts that an open test of this term waits for. */
  void waits(long cells, Trace trace, FactSet into);

  @Override
  default void writes(IntConsumer each) {
    each.accept(slot());
  }

  /** Yes when a condition holds. */
  record Derived(int slot, Node when) implements TermStep {
    @Override
    public void run(long[] base, long[] state) {
      state[slot] =
          switch (when.in(state)) {
            case TRUE -> Shape.YES;
            case FALSE -> Shape.NO;
            case OPEN -> Shape.YES | Shape.NO;
          };
    }

    @Override
    public void reads(IntConsumer each) {
      when.slots(each);
    }

    @Override
    public void support(long cells, Trace trace, FactSet into) {
      trace.support(this, into);
    }

    @Override
    public void waits(long cells, Trace trace, FactSet into) {
      trace.waits(this, into);
    }
  }
}
