package closehand.rules;

import closehand.bank.Bank;
import closehand.interview.Answer;
import closehand.interview.Answers;
import closehand.interview.Value;
import java.util.List;

/** Turns answers into the state they alone bring about, before anything is worked out. */
final class BaseStates {
  private final FactTable table;
  private final long[] blank;

  BaseStates(FactTable table) {
    this.table = table;
    this.blank = new long[table.size()];
    table.all().forEach(asked -> asked.setOpen(blank));
    FactTable.Worked cleared = table.worked(FactTable.CLEARED);
    cleared.shape().put(new Value.Codes(List.of()), blank, cleared.slot());
    for (int game : table.games()) {
      blank[table.listedSlot(game)] = Shape.NO | Shape.YES;
    }
  }

  /**
   * The state of these answers; answers to facts the bank does not have are passed over.
   *
   * @throws IllegalArgumentException when an answer is not of its question's kind
   */
  long[] of(Answers answers) {
    long[] base = blank.clone();
    answers
        .byFact()
        .forEach(
            (fact, recorded) ->
                table.findAsked(fact).ifPresent(asked -> put(asked, recorded.answer(), base)));
    if (table.worked(FactTable.CLEARED).shape() instanceof SeveralShape cautions) {
      for (Answers.Lowered lowered : answers.lowered()) {
        int index = cautions.index(lowered.code());
        if (index >= 0) {
          base[table.worked(FactTable.CLEARED).slot() + index] = Shape.YES;
        }
      }
    }
    return base;
  }

  private static void put(Asked asked, Answer answer, long[] base) {
    if (answer instanceof Answer.Given given) {
      if (!asked.put(given.value(), base)) {
        throw new IllegalArgumentException(
            "the answer is not of the question's kind: " + asked.fact());
      }
      base[asked.howSlot()] = How.state(How.GIVEN);
    } else if (answer instanceof Answer.Absent absent) {
      putAbsent(asked, absent.reason(), base);
    }
  }

  private static void putAbsent(Asked asked, Answer.Reason reason, long[] base) {
    switch (reason) {
      case UNKNOWN -> putUnknown(asked, base);
      case DECLINED -> base[asked.howSlot()] = How.state(How.DECLINED);
      case LATER -> base[asked.howSlot()] = How.state(How.LATER);
      case NOT_APPLICABLE -> {
        if (asked.gate()) {
          // A warning sign cannot fail to apply; whoever says so leaves it open.
          putUnknown(asked, base);
        } else {
          asked.setNotApplicable(base);
        }
      }
    }
  }

  private static void putUnknown(Asked asked, long[] base) {
    base[asked.howSlot()] = How.state(How.NOT_KNOWN);
    if (asked.unknownIsUnsure()) {
      asked.put(unsure(asked), base);
    }
  }

  /** The answer that "don't know" counts as. */
  static Value unsure(Asked asked) {
    return asked.shape() instanceof SeveralShape
        ? new Value.Codes(List.of(Asked.UNSURE))
        : new Value.Code(Asked.UNSURE);
  }

  /**
   * Takes every game but one out of a state, as if its slot held none.
   *
   * @throws IllegalArgumentException for a slot that is not 1 to 3
   */
  void keepOnly(int game, long[] base) {
    if (game < 1 || game > Bank.GAME_SLOTS) {
      throw new IllegalArgumentException("no such game slot: " + game);
    }
    for (int other : table.games()) {
      if (other != game) {
        base[table.listedSlot(other)] = Shape.NO;
        for (Asked asked : table.all()) {
          if (asked.fact().startsWith(GameScope.prefix(other))) {
            asked.setNotApplicable(base);
          }
        }
      }
    }
  }
}
