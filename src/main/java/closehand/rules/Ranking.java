package closehand.rules;

import closehand.bank.Approach;
import closehand.bank.Bank;
import java.util.ArrayList;
import java.util.List;

/**
 * The fixed order that settles ties: cheaper class of cost, shorter longest set-up, declared order.
 */
final class Ranking {
  private final int[] places;

  Ranking(Bank bank) {
    List<String> classes = new ArrayList<>();
    bank.costClasses().forEach(c -> classes.add(c.code()));
    List<Approach> approaches = bank.approaches();
    int[] cheapest = new int[approaches.size()];
    List<Integer> order = new ArrayList<>();
    for (int i = 0; i < cheapest.length; i++) {
      cheapest[i] = cheapest(approaches.get(i), classes);
      order.add(i);
    }
    order.sort(
        (a, b) ->
            cheapest[a] != cheapest[b]
                ? Integer.compare(cheapest[a], cheapest[b])
                : Double.compare(
                    approaches.get(a).setupMinutes().maximum(),
                    approaches.get(b).setupMinutes().maximum()));
    places = new int[order.size()];
    for (int place = 0; place < places.length; place++) {
      places[order.get(place)] = place;
    }
  }

  /** The cheapest class the approach can be had in; an unknown class counts as dearest. */
  private static int cheapest(Approach approach, List<String> classes) {
    int cheapest = classes.size();
    for (String one : approach.costClasses()) {
      int place = classes.indexOf(one);
      if (place >= 0 && place < cheapest) {
        cheapest = place;
      }
    }
    return cheapest;
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
    order.sort((a, b) -> compare(tally, a, b));
    return order;
  }

  private int compare(Tally tally, int a, int b) {
    int groups = Integer.compare(group(tally.status(a)), group(tally.status(b)));
    int points = groups != 0 ? groups : Integer.compare(tally.points(b), tally.points(a));
    return points != 0 ? points : Integer.compare(places[a], places[b]);
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
