package closehand.rules.proof;

import closehand.bank.Approach;
import closehand.bank.Bank;
import closehand.bank.Where;
import closehand.rules.Search;
import closehand.rules.proof.Advisory.Kind;
import java.util.ArrayList;
import java.util.List;

/** Whether everything can be ruled out at once. */
final class ApproachProofs {
  private static final String SETTINGS = "settings";

  private final Bank bank;
  private final Search search;
  private final Firing firing;
  private final Against against;

  ApproachProofs(Bank bank, Search search, Firing firing, Against against) {
    this.bank = bank;
    this.search = search;
    this.firing = firing;
    this.against = against;
  }

  void allExcluded(List<Advisory> found) {
    List<Search.Wanted> wanted = new ArrayList<>();
    for (Approach approach : bank.approaches()) {
      if (!approach.family().equals(SETTINGS)) {
        List<Integer> out = against.excluders(approach.id());
        if (out.isEmpty()) {
          return;
        }
        wanted.add(new Search.Wanted(new Search.Goal.Fires(out), true));
      }
    }
    Search.Found all = search.find(wanted);
    if (!wanted.isEmpty() && !(all instanceof Search.Found.None)) {
      found.add(
          Advisory.searched(Kind.ALL_EXCLUDED, List.of(), List.of(), all, Where.file("rules"))
              .shownBy(firing.shown(wanted, all)));
    }
  }
}
