package closehand.rules;

import closehand.bank.Approach;
import closehand.bank.Bank;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * The fixed order that settles ties: cheaper class of cost, shorter longest set-up, declared order.
 */
final class Ranking {
  private final int[] places;

  Ranking(Bank bank) {
    List<String> classes = bank.costClasses().stream().map(Approach.CostClass::code).toList();
    List<Approach> approaches = bank.approaches();
    List<Integer> order = new ArrayList<>();
    for (int i = 0; i < approaches.size(); i++) {
      order.add(i);
    }
    order.sort(
        Comparator.<Integer>comparingInt(i -> cheapest(approaches.get(i), classes))
            .thenComparingDouble(i -> approaches.get(i).setupMinutes().maximum()));
    places = new int[order.size()];
    for (int place = 0; place < places.length; place++) {
      places[order.get(place)] = place;
    }
  }

  /** The cheapest class the approach can be had in; an unknown class counts as dearest. */
  private static int cheapest(Approach approach, List<String> classes) {
    return approach.costClasses().stream()
        .mapToInt(classes::indexOf)
        .filter(place -> place >= 0)
        .min()
        .orElse(classes.size());
  }

  /** The place of an approach among those with equal points, from 0. */
  int place(int approach) {
    return places[approach];
  }

  /** All approaches in the order of an advice. */
  List<Integer> ordered(Tally tally) {
    List<Integer> order = new ArrayList<>();
    for (int i = 0; i < places.length; i++) {
      order.add(i);
    }
    order.sort(
        Comparator.<Integer>comparingInt(i -> group(tally.status(i)))
            .thenComparingInt(i -> -tally.points(i))
            .thenComparingInt(this::place));
    return order;
  }

  private static int group(Standing.Status status) {
    return switch (status) {
      case STRONG, WORTH_TRYING -> 0;
      case UNDECIDED -> 1;
      case NOT_SUGGESTED -> 2;
      case RULED_OUT -> 3;
    };
  }
}
