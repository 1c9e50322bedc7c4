package closehand.report;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** What stands in another place than before, told with as few moves as will do. */
final class PaperOrder {
  private PaperOrder() {}

  /**
   * The moves as a sentence; nothing where both are in the same order.
   *
   * @param before names in their old order
   * @param after the same names in their new order
   */
  static Optional<String> moved(List<String> before, List<String> after) {
    if (before.equals(after)) {
      return Optional.empty();
    }
    Set<String> still = new HashSet<>(longestInOrder(before, after));
    List<String> moves = new ArrayList<>();
    for (int i = 0; i < after.size(); i++) {
      if (!still.contains(after.get(i))) {
        String place = i == 0 ? "now stands first" : "now stands after " + after.get(i - 1);
        moves.add(Phrases.bare(after.get(i)) + " " + Phrases.bare(place));
      }
    }
    return Optional.of(Phrases.sentence(String.join("; ", moves)));
  }

  /** The longest run of names, not necessarily next to each other, that both have in one order. */
  private static List<String> longestInOrder(List<String> before, List<String> after) {
    int[][] length = new int[before.size() + 1][after.size() + 1];
    for (int i = before.size() - 1; i >= 0; i--) {
      for (int j = after.size() - 1; j >= 0; j--) {
        length[i][j] =
            before.get(i).equals(after.get(j))
                ? length[i + 1][j + 1] + 1
                : Math.max(length[i + 1][j], length[i][j + 1]);
      }
    }
    List<String> longest = new ArrayList<>();
    int i = 0;
    int j = 0;
    while (i < before.size() && j < after.size()) {
      if (before.get(i).equals(after.get(j))) {
        longest.add(before.get(i));
        i++;
        j++;
      } else if (length[i + 1][j] >= length[i][j + 1]) {
        i++;
      } else {
        j++;
      }
    }
    return longest;
  }
}
