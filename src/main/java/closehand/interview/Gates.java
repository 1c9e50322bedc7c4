package closehand.interview;

import closehand.bank.EnableWhen;
import closehand.bank.EnableWhen.Expected;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * The conditions of a questionnaire with the questions they speak of looked up. Fields of one group
 * share its condition, so conditions that say the same are one gate and are judged once.
 */
final class Gates {
  /** Stands for a question that the questionnaire does not have. */
  static final int NOWHERE = -1;

  private final List<Gate> gates = new ArrayList<>();
  private final int[][] ofPlace;

  /**
   * One condition.
   *
   * @param places the index of the question of each test, or {@link #NOWHERE}
   */
  record Gate(EnableWhen condition, int[] places) {}

  /** Looks up the conditions of these places; facts are numbered as the places are. */
  Gates(List<Outline.Place> places, Map<String, Outline.Place> byFact) {
    Map<String, Integer> numbers = new HashMap<>();
    ofPlace = new int[places.size()][];
    for (Outline.Place place : places) {
      List<EnableWhen> conditions = place.field().conditions();
      int[] found = new int[conditions.size()];
      for (int i = 0; i < found.length; i++) {
        EnableWhen condition = conditions.get(i);
        String key = key(condition);
        Integer number = numbers.get(key);
        if (number == null) {
          number = gates.size();
          numbers.put(key, number);
          gates.add(new Gate(condition, lookedUp(condition, byFact)));
        }
        found[i] = number;
      }
      ofPlace[place.index()] = found;
    }
  }

  private static int[] lookedUp(EnableWhen condition, Map<String, Outline.Place> byFact) {
    int[] places = new int[condition.tests().size()];
    for (int i = 0; i < places.length; i++) {
      Outline.Place place = byFact.get(condition.tests().get(i).fact());
      places[i] = place == null ? NOWHERE : place.index();
    }
    return places;
  }

  /** How many gates there are. */
  int count() {
    return gates.size();
  }

  Gate gate(int number) {
    return gates.get(number);
  }

  /** The numbers of the gates before a place; all must hold. */
  int[] of(Outline.Place place) {
    return ofPlace[place.index()];
  }

  /** Written out by hand: comparing records costs a cold Java more than all of this. */
  private static String key(EnableWhen condition) {
    StringBuilder key = new StringBuilder(condition.all() ? "all" : "any");
    for (EnableWhen.Test test : condition.tests()) {
      key.append('\n').append(test.fact()).append('\n').append(test.operator().code());
      append(key, test.expected());
    }
    return key.toString();
  }

  private static void append(StringBuilder key, Expected expected) {
    if (expected instanceof Expected.Flag flag) {
      key.append("\nflag ").append(flag.value());
    } else if (expected instanceof Expected.Number number) {
      key.append("\nnumber ").append(number.value());
    } else if (expected instanceof Expected.Coded coded) {
      key.append("\ncode ").append(coded.system()).append('\n').append(coded.code());
    } else if (expected instanceof Expected.Text text) {
      key.append("\ntext ").append(text.value());
    }
  }
}
