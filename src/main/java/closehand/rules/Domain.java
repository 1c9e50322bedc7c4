package closehand.rules;

import closehand.bank.FactType;
import closehand.bank.Option;
import closehand.interview.Value;
import java.util.ArrayList;
import java.util.List;

/**
 * The answers an open question could get, one for each that rules can tell apart, with weights that
 * sum to 1. Every number of the range, every option, and every number of picks out of a list is
 * taken to be as likely as any other; that is no claim about people.
 *
 * @param asked the fact
 * @param values the answers
 * @param weights how likely each is
 * @param places the cell of each answer in each of the fact's slots
 */
record Domain(Asked asked, List<Value> values, double[] weights, int[][] places) {
  private static final int GIVEN_CELL = Long.numberOfTrailingZeros(How.GIVEN);

  /** Lists up to so many options are gone through by subsets. */
  private static final int MOST_SUBSETS = 6;

  /** The answers to this fact. */
  static Domain of(Asked asked, Influence influence) {
    List<Value> values = new ArrayList<>();
    List<Double> weights = new ArrayList<>();
    FactType type = asked.field().type();
    if (type instanceof FactType.YesNo) {
      values.add(new Value.Flag(false));
      values.add(new Value.Flag(true));
    } else if (type instanceof FactType.Amount amount) {
      numbers(asked, amount, values, weights);
    } else if (type instanceof FactType.OneOf one) {
      one.options().forEach(o -> values.add(new Value.Code(o.code())));
    } else if (type instanceof FactType.SeveralOf several) {
      picks(several, influence.onlyCounted(asked), values, weights);
    } else {
      values.add(new Value.Text(""));
    }
    return new Domain(
        asked, List.copyOf(values), shares(weights, values.size()), places(asked, values));
  }

  private static int[][] places(Asked asked, List<Value> values) {
    int[][] places = new int[values.size()][asked.shape().width()];
    long[] scratch = new long[asked.slot() + asked.shape().width() + 3];
    for (int value = 0; value < places.length; value++) {
      asked.shape().put(values.get(value), scratch, asked.slot());
      for (int i = 0; i < places[value].length; i++) {
        places[value][i] = Long.numberOfTrailingZeros(scratch[asked.slot() + i]);
      }
    }
    return places;
  }

  private static double[] shares(List<Double> weights, int size) {
    double[] shares = new double[size];
    double sum = weights.stream().mapToDouble(w -> w).sum();
    for (int i = 0; i < size; i++) {
      shares[i] = weights.isEmpty() ? 1.0 / size : weights.get(i) / sum;
    }
    return shares;
  }

  private static void numbers(
      Asked asked, FactType.Amount amount, List<Value> values, List<Double> weights) {
    Values grid = new Values.Grid(amount.minimum(), amount.maximum(), amount.decimals());
    if (asked.spanSlot().isPresent()) {
      grid.upTo(200).forEach(n -> values.add(new Value.Number(n)));
      return;
    }
    NumberLine line = ((AmountShape) asked.shape()).line();
    double step = Math.pow(10, -amount.decimals());
    for (int cell = 0; cell < line.cells(); cell++) {
      double least = grid.atLeast(Math.max(line.low(cell), grid.minimum()));
      double greatest = grid.below(Math.nextUp(line.high(cell)));
      if (least <= greatest) {
        values.add(new Value.Number(least));
        weights.add(Math.rint((greatest - least) / step) + 1);
      }
    }
  }

  private static void picks(
      FactType.SeveralOf several, boolean counted, List<Value> values, List<Double> weights) {
    List<String> codes =
        several.options().stream().filter(o -> !o.exclusive()).map(Option::code).toList();
    boolean saysNone = codes.size() < several.options().size();
    if (counted || codes.size() > MOST_SUBSETS) {
      // Of longer lists only so many subsets as there are options and numbers of picks.
      for (int size = saysNone ? 1 : 0; size <= codes.size(); size++) {
        int turns = counted || size == 0 || size == codes.size() ? 1 : codes.size();
        for (int turn = 0; turn < turns; turn++) {
          values.add(new Value.Codes(around(codes, turn, size)));
          weights.add(1.0 / turns);
        }
      }
    } else {
      subsets(codes, saysNone, values, weights);
    }
    for (Option option : several.options()) {
      if (option.exclusive()) {
        values.add(new Value.Codes(List.of(option.code())));
        weights.add(1.0);
      }
    }
  }

  private static List<String> around(List<String> codes, int from, int size) {
    List<String> some = new ArrayList<>();
    for (int i = 0; i < size; i++) {
      some.add(codes.get((from + i) % codes.size()));
    }
    return some;
  }

  private static void subsets(
      List<String> codes, boolean saysNone, List<Value> values, List<Double> weights) {
    int[] ofSize = new int[codes.size() + 1];
    for (int set = 0; set < 1 << codes.size(); set++) {
      ofSize[Integer.bitCount(set)]++;
    }
    for (int set = saysNone ? 1 : 0; set < 1 << codes.size(); set++) {
      List<String> some = new ArrayList<>();
      for (int i = 0; i < codes.size(); i++) {
        if ((set & 1 << i) != 0) {
          some.add(codes.get(i));
        }
      }
      values.add(new Value.Codes(some));
      weights.add(1.0 / ofSize[some.size()]);
    }
  }

  int size() {
    return values.size();
  }

  /** The places of answers, each as often in the list as its weight, in order. */
  int[] spread(int length) {
    int[] places = new int[length];
    int place = 0;
    double sum = weights[0];
    for (int i = 0; i < length; i++) {
      while (place < weights.length - 1 && (i + 0.5) / length >= sum) {
        place++;
        sum += weights[place];
      }
      places[i] = place;
    }
    return places;
  }

  /** Puts one answer a set into a block. */
  void fill(Block block, int[] picks, int sets) {
    int width = asked.shape().width();
    int size = Long.SIZE - Long.numberOfLeadingZeros(asked.shape().all());
    for (int i = 0; i < width; i++) {
      block.vary(asked.slot() + i, size);
    }
    block.vary(asked.howSlot(), GIVEN_CELL + 1);
    for (int set = 0; set < sets; set++) {
      int[] cells = places[picks[set]];
      for (int i = 0; i < width; i++) {
        block.put(asked.slot() + i, cells[i], set);
      }
      block.put(asked.howSlot(), GIVEN_CELL, set);
      if (asked.spanSlot().isPresent() && values.get(picks[set]) instanceof Value.Number number) {
        block.put(asked.spanSlot().getAsInt(), number.value(), set);
      }
    }
  }
}
