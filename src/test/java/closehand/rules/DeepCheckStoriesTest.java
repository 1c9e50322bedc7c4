package closehand.rules;

import static closehand.rules.Say.all;
import static closehand.rules.Say.always;
import static closehand.rules.Say.how;
import static closehand.rules.Say.is;
import static closehand.rules.Say.test;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import closehand.bank.Bank;
import closehand.bank.CautionClass;
import closehand.rules.proof.Advisory;
import closehand.rules.proof.Advisory.Kind;
import closehand.rules.proof.Advisory.Proof;
import closehand.rules.proof.DeepCheck;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What a deep check finds, told on banks of a few rules, and against an independent solver. */
class DeepCheckStoriesTest {
  private static List<Advisory> found(Bank bank, Kind kind) {
    return DeepCheck.of(bank).stream().filter(a -> a.kind() == kind).toList();
  }

  private static TestBank xy() {
    return new TestBank().approaches("A", "B").cautions("C").yesNo("x").yesNo("y");
  }

  @Test
  void whatOneRuleSuggestsAndAnotherRulesOutOnTheSameConditionNamesBoth() {
    TestBank bank = xy();
    bank.rule("gives", is("x", true)).points("A", 2);
    bank.rule("other", is("y", true)).excludes("A");
    bank.rule("out", is("x", true)).excludes("A");
    Advisory one = found(bank.build(), Kind.POINTS_NEVER_COUNT).get(0);
    assertEquals(List.of("gives", "out"), one.subjects());
    assertEquals(List.of("A"), one.details());
    assertEquals(Proof.EXHAUSTED, one.proof());
    assertTrue(one.witness().isPresent());
  }

  @Test
  void takersAreSummedForEachApproachHoweverTheyTakeTurns() {
    TestBank bank = xy().yesNo("z");
    bank.rule("gives", is("x", true)).points("A", 2).points("B", 2);
    bank.rule("one", all(is("x", true), is("y", true))).points("A", -2).points("B", -1);
    bank.rule("two", all(is("x", true), is("y", false))).points("A", -1).points("B", -1);
    bank.rule("three", is("x", true)).points("A", -1);
    bank.rule("idle", is("z", true)).points("B", -2);
    List<Advisory> found = found(bank.build(), Kind.CONTRADICTS);
    assertEquals(1, found.size(), found.toString());
    assertEquals(List.of("gives", "one", "two", "three"), found.get(0).subjects());
    assertEquals(List.of("A"), found.get(0).details());
  }

  @Test
  void oneRuleThatSaysAllOfAnotherIsFoundWhateverElseItSays() {
    TestBank bank = xy();
    bank.rule("less", all(is("x", true), is("y", true))).raises("C", CautionClass.NOTE);
    bank.rule("more", is("x", true)).raises("C", CautionClass.CARE).points("B", 1);
    List<Advisory> found = found(bank.build(), Kind.SAYS_THE_SAME);
    assertEquals(1, found.size(), found.toString());
    assertEquals(List.of("less", "more"), found.get(0).subjects());
    assertEquals(List.of(), found.get(0).details());
  }

  @Test
  void theSamePointsForOneApproachCountTwiceThoughTheRestDiffers() {
    TestBank bank = xy();
    bank.rule("one", all(is("x", true), is("y", true))).points("A", 1).points("B", 2);
    bank.rule("two", is("x", true)).points("A", 1);
    List<Advisory> found = found(bank.build(), Kind.SAYS_THE_SAME);
    assertEquals(List.of(List.of("one", "two")), found.stream().map(Advisory::subjects).toList());
    assertEquals(List.of("A"), found.get(0).details());
  }

  @Test
  void aRuleThatOnlyWaitsDoesNotSayTheSame() {
    TestBank bank = xy();
    bank.rule("asks", how("x", "declined")).raises("C", CautionClass.CARE);
    bank.rule("knows", is("x", true)).raises("C", CautionClass.CARE);
    assertEquals(List.of(), found(bank.build(), Kind.SAYS_THE_SAME));
  }

  @Test
  void bandsAreLookedAtForEachApproachByItself() {
    TestBank bank = xy().number("n", 0, 10);
    bank.rule("R1a", test("n", "<=", 4)).points("A", 1);
    bank.rule("R1b", test("n", ">=", 4)).points("A", 2).points("B", 1);
    bank.rule("R1c", test("n", ">=", 8)).points("B", 2);
    List<List<String>> pairs =
        found(bank.build(), Kind.BAND_OVERLAP).stream().map(Advisory::subjects).toList();
    assertEquals(List.of(List.of("R1a", "R1b"), List.of("R1b", "R1c")), pairs);
  }

  @Test
  void answersThatOnlyALargestNumberTellsApartAreNotAlike() {
    TestBank bank = xy().scale("s", List.of(0, 1, 2, 3)).scale("t", List.of(0, 1, 2, 3));
    bank.max("best", "s", "t");
    bank.rule("own", test("s", ">=", 2)).points("A", 1);
    bank.rule("largest", test("best", ">=", 1)).points("A", 1);
    Map<String, List<String>> alike = new TreeMap<>();
    found(bank.build(), Kind.ANSWERS_ALIKE)
        .forEach(a -> alike.put(a.subjects().get(0), a.details()));
    assertEquals(Map.of("s", List.of("2", "3"), "t", List.of("1", "2", "3")), alike);
  }

  @Test
  void whatOnlyAnUnreadTermReadsIsReadByNoRule() {
    TestBank bank = xy();
    bank.derived("first", is("x", true)).derived("second", is("first", true));
    bank.rule("rule", is("y", true)).points("A", 1);
    assertEquals(
        List.of("first", "second"),
        found(bank.build(), Kind.UNUSED_TERM).stream().map(a -> a.subjects().get(0)).toList());
    assertEquals(
        List.of("x"),
        found(bank.build(), Kind.UNUSED_QUESTION).stream().map(a -> a.subjects().get(0)).toList());
  }

  @Test
  void aNumberThatNeverHasAValueIsFound() {
    TestBank bank = xy().number("n", 0, 9, Say.when("x", true), Say.when("x", false));
    bank.max("most", "n");
    bank.rule("rule", test("most", ">=", 3)).points("A", 1);
    Advisory one = found(bank.build(), Kind.NOBODY_FEEDS).get(0);
    assertEquals(List.of("most"), one.subjects());
    assertEquals(List.of("without a value"), one.details());
  }

  @Test
  void whatIsAlwaysRuledOutIsFoundForRulesThatReadAnythingElse() {
    TestBank bank = xy();
    bank.rule("gives", is("x", true)).points("A", 2);
    bank.rule("out", always()).excludes("A");
    assertEquals(
        List.of(List.of("gives", "out")),
        found(bank.build(), Kind.POINTS_NEVER_COUNT).stream().map(Advisory::subjects).toList());
  }

  /** Banks by chance: every finding that can be put to the solver, and no other, is its finding. */
  @ParameterizedTest
  @ValueSource(longs = {701, 702, 703, 704, 705, 706})
  void theFindingsAreThoseOfAnIndependentSolver(long seed) {
    Bank bank = RandomBank.of(seed, 16, true);
    SatBank solver = new SatBank(bank);
    List<Advisory> all = DeepCheck.of(bank);
    List<String> expected = new ArrayList<>();
    int rules = bank.rules().size();
    for (int i = 0; i < rules; i++) {
      if (!solver.possible(Map.of(i, true))) {
        expected.add(Kind.NEVER_FIRES + " " + bank.rules().get(i).key());
        continue;
      }
      if (!solver.possible(Map.of(i, false))) {
        expected.add(Kind.ALWAYS_FIRES + " " + bank.rules().get(i).key());
      }
      for (var given : bank.rules().get(i).effects().support()) {
        Map<Integer, Boolean> wanted = new TreeMap<>();
        for (int other = 0; other < rules; other++) {
          if (bank.rules().get(other).effects().exclude().stream()
              .anyMatch(e -> e.name().equals(given.approach()))) {
            wanted.put(other, false);
          }
        }
        boolean itself = wanted.put(i, true) != null;
        if (given.points() > 0 && !itself && !solver.possible(wanted)) {
          expected.add(Kind.POINTS_NEVER_COUNT + " " + bank.rules().get(i).key());
        }
      }
    }
    List<String> found = new ArrayList<>();
    for (Advisory one : all) {
      switch (one.kind()) {
        case NEVER_FIRES, ALWAYS_FIRES, POINTS_NEVER_COUNT ->
            found.add(one.kind() + " " + one.subjects().get(0));
        default -> {}
      }
    }
    assertEquals(expected.stream().sorted().toList(), found.stream().sorted().toList());
    long unproven = all.stream().filter(a -> a.proof() == Proof.NOT_PROVEN).count();
    assertEquals(0, unproven, "not proven");
  }
}
