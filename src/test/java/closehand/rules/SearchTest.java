package closehand.rules;

import static closehand.rules.Say.all;
import static closehand.rules.Say.any;
import static closehand.rules.Say.has;
import static closehand.rules.Say.how;
import static closehand.rules.Say.is;
import static closehand.rules.Say.test;
import static closehand.rules.Say.when;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import closehand.bank.Bank;
import closehand.bank.Term;
import closehand.interview.Answers;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Answers are found exactly where there are some, against an independent solver. */
class SearchTest {
  private static final int BUDGET = 200_000;

  private static Search.Found fires(RuleBook book, int rule, boolean holds) {
    return Search.of(book, BUDGET).find(new Search.Goal.Fires(rule), holds);
  }

  /** Whether a witness was found; it is tried out on the rules. */
  private static boolean found(RuleBook book, Search.Found found, Map<Integer, Boolean> wanted) {
    if (found instanceof Search.Found.Witness witness) {
      wanted.forEach(
          (rule, fires) ->
              assertEquals(
                  fires ? Outcome.TRUE : Outcome.FALSE,
                  book.find(rule, witness.answers()).outcome(),
                  "rule " + rule + " on its witness " + witness.answers().byFact().keySet()));
      return true;
    }
    assertTrue(found instanceof Search.Found.None, "not proven: " + found);
    return false;
  }

  @ParameterizedTest
  @ValueSource(longs = {601, 602, 603, 604, 605, 606})
  void everyRuleIsReachableExactlyWhereTheSolverSaysSo(long seed) {
    Bank bank = RandomBank.of(seed, 20, true);
    RuleBook book = RuleBook.of(bank);
    SatBank solver = new SatBank(bank);
    for (int rule = 0; rule < bank.rules().size(); rule++) {
      for (boolean holds : new boolean[] {true, false}) {
        Map<Integer, Boolean> wanted = Map.of(rule, holds);
        assertEquals(
            solver.possible(wanted),
            found(book, fires(book, rule, holds), wanted),
            "rule " + rule + " " + holds);
      }
    }
  }

  @ParameterizedTest
  @ValueSource(longs = {611, 612, 613})
  void pairsOfRulesAgreeWithTheSolverToo(long seed) {
    Bank bank = RandomBank.of(seed, 10, true);
    RuleBook book = RuleBook.of(bank);
    SatBank solver = new SatBank(bank);
    int impossible = 0;
    for (int one = 0; one < 10; one++) {
      for (int other = 0; other < 10; other++) {
        if (one != other) {
          Map<Integer, Boolean> wanted = Map.of(one, true, other, false);
          Search.Found found =
              Search.of(book, BUDGET)
                  .find(
                      List.of(
                          new Search.Wanted(new Search.Goal.Fires(one), true),
                          new Search.Wanted(new Search.Goal.Fires(other), false)));
          boolean possible = solver.possible(wanted);
          assertEquals(possible, found(book, found, wanted), one + " without " + other);
          impossible += possible ? 0 : 1;
        }
      }
    }
    assertTrue(impossible > 0, "pairs that cannot be: " + impossible);
  }

  @Test
  void aQuestionIsOnlyAnsweredWhereItApplies() {
    TestBank bank = new TestBank().yesNo("door").yesNo("room", when("door", true));
    bank.rule("in", is("room", true));
    bank.rule("never", all(is("room", true), is("door", false)));
    RuleBook book = bank.book();
    Search.Found in = fires(book, 0, true);
    assertTrue(in instanceof Search.Found.Witness);
    Answers answers = ((Search.Found.Witness) in).answers();
    assertEquals(List.of("door", "room"), List.copyOf(answers.byFact().keySet()));
    assertEquals(new Search.Found.None(), fires(book, 1, true));
  }

  @Test
  void anOptionThatExcludesTheOthersStandsAlone() {
    TestBank bank = new TestBank().several("m", List.of("none", "p", "q"));
    bank.computed("count", Term.Computation.COUNT, "m");
    bank.rule("both", all(has("m", "none"), has("m", "p")));
    bank.rule("empty", all(test("count", "<", 1), test("count", ">=", 0)));
    bank.rule("neither", all(Say.not(has("m", "none")), test("count", "<", 1)));
    RuleBook book = bank.book();
    assertEquals(new Search.Found.None(), fires(book, 0, true));
    assertTrue(fires(book, 1, true) instanceof Search.Found.Witness);
    assertEquals(new Search.Found.None(), fires(book, 2, true));
  }

  @Test
  void differencesAreSplitDownToTheNumbers() {
    TestBank bank = new TestBank().number("a", 0, 10).number("b", 0, 10);
    bank.computed("gap", Term.Computation.DIFFERENCE, "a", "b");
    bank.rule("wide", all(test("gap", ">=", 3), test("a", "<=", 4), test("b", ">=", 1)));
    bank.rule("never", all(test("gap", ">=", 3), test("a", "<=", 2)));
    RuleBook book = bank.book();
    assertTrue(found(book, fires(book, 0, true), Map.of(0, true)));
    assertEquals(new Search.Found.None(), fires(book, 1, true));
  }

  @Test
  void howSomethingIsKnownIsSearchedToo() {
    TestBank bank = new TestBank().yesNo("x");
    bank.rule("silent", how("x", "declined"));
    bank.rule("both", all(how("x", "declined"), is("x", true)));
    bank.rule("either", any(how("x", "given"), how("x", "declined")));
    RuleBook book = bank.book();
    assertTrue(found(book, fires(book, 0, true), Map.of(0, true)));
    assertEquals(new Search.Found.None(), fires(book, 1, true));
    assertTrue(found(book, fires(book, 2, true), Map.of(2, true)));
  }

  @Test
  void aBudgetThatIsTooSmallProvesNothing() {
    TestBank bank = new TestBank().yesNo("x").yesNo("y");
    bank.rule("never", all(any(is("x", true), is("y", true)), is("x", false), is("y", false)));
    assertTrue(
        Search.of(bank.book(), 1).find(new Search.Goal.Fires(0), true)
            instanceof Search.Found.GivenUp);
    assertEquals(new Search.Found.None(), fires(bank.book(), 0, true));
  }
}
