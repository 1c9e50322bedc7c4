package closehand.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import closehand.bank.Bank;
import closehand.bank.Condition;
import closehand.bank.Rule;
import closehand.bank.Rule.Expect;
import closehand.json.BankReader;
import closehand.json.EmbeddedBank;
import java.io.IOException;
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
  /** Rows that none of the eight gold cases reaches: only their own examples hold them. */
  private static final List<String> NO_GOLD_CASE_REACHES =
      List.of(
          "R001", "R002", "R003", "R004", "R005", "R006", "R007", "R008", "R011", "R012", "R013",
          "R014", "R015", "R019", "R020", "R021", "R022", "R023", "R024", "R037", "R051", "R056",
          "R061", "R068", "R076", "R080", "R082", "R090", "R100", "R104", "R106", "R108");

  private static Map<String, List<Rule>> byRow;

  @BeforeAll
  static void readBank() throws IOException {
    Bank bank = BankReader.read(new EmbeddedBank()).bank().orElseThrow();
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
    assertEquals(32, NO_GOLD_CASE_REACHES.size());
    for (String row : NO_GOLD_CASE_REACHES) {
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
