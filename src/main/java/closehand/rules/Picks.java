package closehand.rules;

/** What one pick out of a list means for the other options. */
final class Picks {
  private Picks() {}

  /**
   * Settles the options that follow: an option that excludes all others stands alone, and where
   * there is one, picking nothing is no answer.
   *
   * @return whether an answer is still possible
   */
  static boolean close(Asked fact, SeveralShape several, long[] state) {
    boolean changed = true;
    while (changed) {
      changed = false;
      for (int i = 0; i < several.width(); i++) {
        if (state[fact.slot() + i] == Shape.YES) {
          int cleared = clear(fact, several, i, state);
          if (cleared < 0) {
            return false;
          }
          changed |= cleared > 0;
        }
      }
      int last = onlyOneLeft(fact, several, state);
      if (last == NOTHING) {
        return false;
      }
      if (last >= 0 && state[fact.slot() + last] != Shape.YES) {
        state[fact.slot() + last] = Shape.YES;
        changed = true;
      }
    }
    return true;
  }

  private static final int NOTHING = -2;
  private static final int SEVERAL = -1;

  /** Clears what cannot stand beside a pick; how many, or -1 where that is picked already. */
  private static int clear(Asked fact, SeveralShape several, int picked, long[] state) {
    int cleared = 0;
    boolean alone = several.options().get(picked).exclusive();
    for (int i = 0; i < several.width(); i++) {
      if (i != picked && (alone || several.options().get(i).exclusive())) {
        if (state[fact.slot() + i] == Shape.YES) {
          return -1;
        }
        cleared += state[fact.slot() + i] == Shape.NO ? 0 : 1;
        state[fact.slot() + i] = Shape.NO;
      }
    }
    return cleared;
  }

  /** The only option that can still be picked, where something must be picked. */
  private static int onlyOneLeft(Asked fact, SeveralShape several, long[] state) {
    boolean saysNone = several.options().stream().anyMatch(o -> o.exclusive());
    int left = NOTHING;
    for (int i = 0; i < several.width(); i++) {
      if (state[fact.slot() + i] != Shape.NO) {
        left = left == NOTHING ? i : SEVERAL;
      }
    }
    return saysNone ? left : SEVERAL;
  }
}
