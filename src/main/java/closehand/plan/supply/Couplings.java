package closehand.plan.supply;

import closehand.plan.KnownFacts;
import closehand.plan.problem.Pair;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/**
 * Which parts of the body cannot press at the same moment: neighbouring fingers where pairs failed
 * or were not tried, and parts that hang on one another.
 */
final class Couplings {
  private static final List<String> FINGERS = List.of("T", "I", "M", "R", "L");
  private static final List<List<String>> ON_ONE_ARM =
      List.of(
          List.of("forearm", "elbow", "shoulder", "hand"),
          List.of("forearm", "T", "I", "M", "R", "L"),
          List.of("elbow", "T", "I", "M", "R", "L"),
          List.of("shoulder", "T", "I", "M", "R", "L"));
  private static final List<String> HEAD = List.of("head", "chin", "cheek", "brow", "jaw");
  private static final List<String> MOUTH = List.of("voice", "breath", "jaw", "chin");
  private static final double MOVES_WITH_NEIGHBOURS = 1;

  private final KnownFacts facts;
  private final Set<String> there;
  private final List<Pair> pairs = new ArrayList<>();

  private Couplings(KnownFacts facts, Set<String> there) {
    this.facts = facts;
    this.there = there;
  }

  /** The coupled pairs among these parts of the body. */
  static List<Pair> of(KnownFacts facts, Set<String> there) {
    Couplings couplings = new Couplings(facts, there);
    for (String side : List.of("L", "R")) {
      couplings.fingers(side + ".");
      for (List<String> group : ON_ONE_ARM) {
        String first = side + "." + group.get(0);
        group.subList(1, group.size()).forEach(g -> couplings.add(first, side + "." + g));
      }
      couplings.add(side + ".elbow", side + ".shoulder");
      couplings.add(side + ".foot", side + ".knee");
    }
    couplings.all(HEAD);
    couplings.all(MOUTH);
    return couplings.pairs.stream().distinct().toList();
  }

  private void fingers(String side) {
    boolean present = FINGERS.stream().anyMatch(f -> there.contains(side + f));
    String together = present ? facts.code("pairs.ok").orElse("some") : "some";
    for (int i = 0; i < FINGERS.size(); i++) {
      for (int j = i + 1; j < FINGERS.size(); j++) {
        boolean neighbours = j == i + 1 && i > 0;
        boolean fails =
            together.equals("none")
                || (neighbours && together.equals("some"))
                || (neighbours && (tied(side, FINGERS.get(i)) || tied(side, FINGERS.get(j))));
        if (fails) {
          add(side + FINGERS.get(i), side + FINGERS.get(j));
        }
      }
    }
  }

  private boolean tied(String side, String finger) {
    String fact = "digit." + side + "move." + finger;
    return there.contains(side + finger) && facts.number(fact).orElse(0) <= MOVES_WITH_NEIGHBOURS;
  }

  private void all(List<String> group) {
    for (int i = 0; i < group.size(); i++) {
      for (int j = i + 1; j < group.size(); j++) {
        add(group.get(i), group.get(j));
      }
    }
  }

  private void add(String first, String second) {
    if (there.contains(first) && there.contains(second)) {
      pairs.add(new Pair(first, second));
    }
  }
}
