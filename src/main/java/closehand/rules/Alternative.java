package closehand.rules;

import closehand.bank.FactType;
import closehand.bank.Option;
import closehand.interview.Value;
import java.util.ArrayList;
import java.util.List;

/**
 * One other answer to a question, standing for all answers of its cell.
 *
 * @param value an answer of that cell
 * @param to the cell in plain data
 * @param offset how many cells away it is, negative for smaller answers; 1 where there is no order
 */
record Alternative(Value value, Change.To to, int offset) {
  /** Most numbers tried one by one. */
  private static final int MOST_NUMBERS = 1000;

  /**
   * Every other answer to a fact that has exactly one value now; ascending for numbers. Of numbers
   * that a difference reads, each alone, but no more than the first 1001.
   */
  static List<Alternative> to(Asked asked, long[] state) {
    Shape shape = asked.shape();
    if (shape instanceof YesNoShape) {
      boolean other = state[asked.slot()] == Shape.NO;
      return List.of(new Alternative(new Value.Flag(other), new Change.To.Flag(other), 1));
    }
    if (shape instanceof AmountShape amount
        && asked.field().type() instanceof FactType.Amount type) {
      Values numbers = new Values.Grid(type.minimum(), type.maximum(), type.decimals());
      return asked.spanSlot().isPresent()
          ? singleNumbers(numbers, value(asked, state))
          : cells(amount, numbers, place(state[asked.slot()]));
    }
    if (shape instanceof ChoiceShape choice) {
      return options(choice, state[asked.slot()]);
    }
    return shape instanceof SeveralShape several ? picks(several, asked.slot(), state) : List.of();
  }

  private static double value(Asked asked, long[] state) {
    return Double.longBitsToDouble(state[asked.spanSlot().orElseThrow()]);
  }

  private static int place(long cell) {
    return Long.numberOfTrailingZeros(cell);
  }

  /** Numbers whose value itself counts stand for themselves alone. */
  private static List<Alternative> singleNumbers(Values numbers, double now) {
    List<Alternative> others = new ArrayList<>();
    for (double number : numbers.upTo(MOST_NUMBERS)) {
      if (number != now) {
        others.add(
            new Alternative(
                new Value.Number(number),
                new Change.To.Between(number, number),
                number < now ? -1 : 1));
      }
    }
    return others;
  }

  private static List<Alternative> cells(AmountShape amount, Values numbers, int now) {
    List<Alternative> others = new ArrayList<>();
    for (int cell = 0; cell < amount.line().cells(); cell++) {
      if (cell != now && (amount.all() & 1L << cell) != 0) {
        double least = numbers.atLeast(Math.max(amount.line().low(cell), numbers.minimum()));
        double greatest = numbers.below(Math.nextUp(amount.line().high(cell)));
        int between = Long.bitCount(amount.all() & between(cell, now));
        others.add(
            new Alternative(
                new Value.Number(least),
                new Change.To.Between(least, greatest),
                cell < now ? -between - 1 : between + 1));
      }
    }
    return others;
  }

  private static long between(int one, int other) {
    long above = -1L << (Math.min(one, other) + 1);
    return above & ((1L << Math.max(one, other)) - 1);
  }

  private static List<Alternative> options(ChoiceShape choice, long now) {
    List<Alternative> others = new ArrayList<>();
    boolean ordered = choice.line().isPresent();
    for (int i = 0; i < choice.options().size(); i++) {
      int cell = choice.cells().get(i);
      String code = choice.options().get(i).code();
      if (1L << cell != now) {
        int between = Long.bitCount(choice.all() & between(cell, place(now)));
        others.add(
            new Alternative(
                new Value.Code(code), new Change.To.Option(code), ordered ? between + 1 : 1));
      }
    }
    return others;
  }

  /** One option more or less; an option that excludes all others clears them and is cleared. */
  private static List<Alternative> picks(SeveralShape several, int slot, long[] state) {
    List<String> now = new ArrayList<>();
    List<String> excluding = new ArrayList<>();
    for (int i = 0; i < several.width(); i++) {
      Option option = several.options().get(i);
      if (option.exclusive()) {
        excluding.add(option.code());
      }
      if (state[slot + i] == Shape.YES) {
        now.add(option.code());
      }
    }
    List<Alternative> others = new ArrayList<>();
    for (Option option : several.options()) {
      boolean add = !now.contains(option.code());
      List<String> then = new ArrayList<>(option.exclusive() ? List.of() : now);
      then.removeAll(excluding);
      then.remove(option.code());
      if (add) {
        then.add(option.code());
      }
      if (add || !option.exclusive()) {
        others.add(
            new Alternative(new Value.Codes(then), new Change.To.Picked(option.code(), add), 1));
      }
    }
    return others;
  }
}
