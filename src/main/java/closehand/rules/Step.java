package closehand.rules;

import java.util.function.IntConsumer;

/** One step of working out a state: reads slots settled before and settles its own. */
sealed interface Step permits Step.Gate, Step.Listed, TermStep {
  /**
   * Settles its slots.
   *
   * @param base what the answers alone say
   * @param state the state so far
   */
  void run(long[] base, long[] state);

  /** Every slot it reads. */
  void reads(IntConsumer each);

  /** Every slot it settles. */
  void writes(IntConsumer each);

  /**
   * Whether a fact applies. If not, its answer is set aside; while that is open, an answer counts.
   *
   * @param asked the fact
   * @param applies when it applies
   */
  record Gate(Asked asked, Node applies) implements Step {
    @Override
    public void run(long[] base, long[] state) {
      Outcome outcome = applies.in(state);
      if (outcome == Outcome.FALSE) {
        asked.setNotApplicable(state);
        return;
      }
      long maybe = outcome == Outcome.OPEN ? Node.NOT_APPLICABLE : 0;
      long extra = asked.valued(base) ? 0 : maybe;
      int end = asked.slot() + asked.shape().width();
      for (int slot = asked.slot(); slot < end; slot++) {
        state[slot] = base[slot] | extra;
      }
      long how = base[asked.howSlot()];
      state[asked.howSlot()] = how | ((how & How.NOT_ASKED) != 0 ? maybe : 0);
    }

    @Override
    public void reads(IntConsumer each) {
      applies.slots(each);
    }

    @Override
    public void writes(IntConsumer each) {
      each.accept(asked.howSlot());
      for (int i = 0; i < asked.shape().width(); i++) {
        each.accept(asked.slot() + i);
      }
    }
  }

  /**
   * Whether a game slot holds a game: its genre is given and not "none".
   *
   * @param genre the fact that names the kind of game
   * @param none the cell of the answer "none"; 0 when there is no such answer
   * @param slot where it is kept
   */
  record Listed(Asked genre, long none, int slot) implements Step {
    @Override
    public void run(long[] base, long[] state) {
      long cells = state[genre.slot()];
      if (base[slot] == Shape.NO || cells == Node.NOT_APPLICABLE || cells == none) {
        state[slot] = Shape.NO;
      } else {
        state[slot] = genre.valued(base) ? Shape.YES : Shape.NO | Shape.YES;
      }
    }

    @Override
    public void reads(IntConsumer each) {
      each.accept(genre.slot());
    }

    @Override
    public void writes(IntConsumer each) {
      each.accept(slot);
    }
  }
}
