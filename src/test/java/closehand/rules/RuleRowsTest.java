package closehand.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import closehand.bank.Bank;
import closehand.bank.Condition;
import closehand.bank.Rule;
import closehand.bank.Rule.Expect;
import closehand.interview.Answers;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/**
 * The core bank holds every row of the trade's rules, and each rule shows by example what it does.
 */
class RuleRowsTest {
  private static Bank bank;
  private static Map<String, List<Rule>> byRow;

  /** Rows that none of the eight gold cases reaches: only their own examples hold them. */
  /** Rows that fire in none of the gold cases, neither for one game nor for all together. */
  private static Set<String> noGoldCaseReaches() {
    Set<String> rows = new TreeSet<>(byRow.keySet());
    RuleBook book = RuleBook.of(bank);
    for (Answers answers : GoldAnswers.of(bank).values()) {
      for (int game : book.games(answers)) {
        fired(book.advise(answers, game)).forEach(rows::remove);
      }
      fired(book.advise(answers)).forEach(rows::remove);
    }
    return rows;
  }

  private static List<String> fired(Advice advice) {
    return advice.findings().stream()
        .filter(f -> f.outcome() == Outcome.TRUE)
        .map(f -> f.rule().id().substring(0, 4))
        .toList();
  }

  @BeforeAll
  static void readBank() {
    bank = GoldAnswers.bank();
    byRow = new LinkedHashMap<>();
    bank.rules()
        .forEach(r -> byRow.computeIfAbsent(r.id().substring(0, 4), k -> new ArrayList<>()).add(r));
  }

  @Test
  void thereAreAllHundredAndTwentyRowsAndNoOthers() {
    Set<String> rows = new TreeSet<>();
    for (int i = 1; i <= 120; i++) {
      rows.add("R" + Integer.toString(1000 + i).substring(1));
    }
    assertEquals(rows, new TreeSet<>(byRow.keySet()));
  }

  @Test
  void everyRuleHasAnExampleThatFiresOneThatDoesNotAndOneThatWaits() {
    List<String> lacking = new ArrayList<>();
    for (List<Rule> rules : byRow.values()) {
      for (Rule rule : rules) {
        Set<Expect> wanted = EnumSet.allOf(Expect.class);
        rule.examples().forEach(e -> wanted.remove(e.expect()));
        if (rule.when() instanceof Condition.Always && rule.unless().isEmpty()) {
          wanted.remove(Expect.NOT);
          wanted.remove(Expect.WAITS);
        }
        if (rule.id().equals("R021")) {
          // It asks whether questions are open, so it is never open itself.
          wanted.remove(Expect.WAITS);
        }
        wanted.forEach(w -> lacking.add(rule.key() + " " + w));
      }
    }
    assertEquals(List.of(), lacking);
  }

  @Test
  void everyRowThatNoGoldCaseReachesFiresInAnExampleOfItsOwn() {
    Set<String> unreached = noGoldCaseReaches();
    assertTrue(unreached.size() < byRow.size() / 2, "gold cases reach too little: " + unreached);
    assertTrue(unreached.contains("R001"), "no gold case holds a warning sign of that kind");
    for (String row : unreached) {
      List<Rule> rules = byRow.getOrDefault(row, List.of());
      assertTrue(!rules.isEmpty(), row);
      assertTrue(
          rules.stream()
              .allMatch(r -> r.examples().stream().anyMatch(e -> e.expect() == Expect.FIRES)),
          row);
    }
  }

  @Test
  void everyRuleSaysWhatItRestsOn() {
    byRow
        .values()
        .forEach(
            rules ->
                rules.forEach(
                    r -> assertTrue(!r.basis().isEmpty() && !r.reason().isBlank(), r.key())));
  }
}
