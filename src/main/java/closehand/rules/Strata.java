package closehand.rules;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * In which order facts and terms can be worked out: each after all it needs.
 *
 * @param order facts and terms in such an order, bank order within a layer
 * @param stuck those that need themselves in the end, in bank order
 */
record Strata(List<String> order, List<String> stuck) {

  static Strata of(BankView view) {
    Map<String, List<String>> needs = new HashMap<>();
    List<String> pending = new ArrayList<>(view.fields().keySet());
    pending.addAll(view.terms().keySet());
    for (String id : pending) {
      List<String> known = view.needs(id);
      known.removeIf(n -> !known(view, n));
      needs.put(id, known);
    }
    List<String> order = new ArrayList<>();
    Set<String> done = new HashSet<>();
    boolean moved = true;
    while (moved && !pending.isEmpty()) {
      List<String> left = new ArrayList<>();
      for (String id : pending) {
        if (done.containsAll(needs.getOrDefault(id, List.of()))) {
          order.add(id);
          done.add(id);
        } else {
          left.add(id);
        }
      }
      moved = left.size() < pending.size();
      pending = left;
    }
    return new Strata(order, onCycles(pending, needs));
  }

  private static boolean known(BankView view, String id) {
    return view.fields().containsKey(id) || view.terms().containsKey(id);
  }

  /** Takes away, again and again, what no other one left needs. */
  private static List<String> onCycles(List<String> left, Map<String, List<String>> needs) {
    List<String> cyclic = left;
    while (true) {
      Set<String> needed = new HashSet<>();
      cyclic.forEach(id -> needed.addAll(needs.getOrDefault(id, List.of())));
      List<String> next = cyclic.stream().filter(needed::contains).toList();
      if (next.size() == cyclic.size()) {
        return next;
      }
      cyclic = next;
    }
  }
}
