package closehand.rules;

import static closehand.rules.Say.all;
import static closehand.rules.Say.always;
import static closehand.rules.Say.answers;
import static closehand.rules.Say.is;
import static closehand.rules.Say.test;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import closehand.bank.Term;
import closehand.interview.Answer;
import closehand.interview.Answers;
import closehand.interview.Dice;
import closehand.interview.Provenance;
import closehand.interview.Value;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What would lead had answers been different is foretold exactly, with nothing left out. */
class VariationsTest {
  private static Answers some(RuleBook book, Dice dice) {
    return RandomBank.part(book, RandomBank.fill(book, Answers.NONE, dice), 6, dice);
  }

  /** Every other value is tried by hand; what leads then is what was foretold. */
  @ParameterizedTest
  @ValueSource(longs = {401, 402, 403, 404, 405, 406})
  void everySingleChangeThatTurnsTheLeadIsFoundAndNoOther(long seed) {
    RuleBook book = RuleBook.of(RandomBank.of(seed, 25, true));
    Dice dice = new Dice(seed);
    int turning = 0;
    for (int round = 0; round < 15; round++) {
      Answers now = some(book, dice);
      Verdict before = book.verdict(now);
      List<Variation> singles = Variations.of(book, now).singles();
      for (String fact : now.byFact().keySet()) {
        if (RandomBank.mayApply(book, now, fact)) {
          for (Value value : OtherValues.of(book, now, fact)) {
            Verdict then = book.verdict(OtherValues.with(now, fact, value));
            Optional<Verdict> foretold = foretold(singles, fact, value, now);
            turning += foretold.isPresent() ? 1 : 0;
            assertEquals(
                then.sameLead(before) ? Optional.empty() : Optional.of(then),
                foretold,
                fact + " " + value);
          }
        }
      }
    }
    assertTrue(turning > 10, "turning values: " + turning);
  }

  private static Optional<Verdict> foretold(
      List<Variation> singles, String fact, Value value, Answers now) {
    return singles.stream()
        .filter(v -> v.steps().get(0).fact().equals(fact))
        .filter(v -> OtherValues.means(v.steps().get(0).to(), value, now.value(fact).orElseThrow()))
        .map(Variation::then)
        .findFirst();
  }

  @ParameterizedTest
  @ValueSource(longs = {411, 412, 413, 414})
  void theNearestComesFirst(long seed) {
    RuleBook book = RuleBook.of(RandomBank.of(seed, 25, true));
    Dice dice = new Dice(seed);
    for (int round = 0; round < 30; round++) {
      int before = 0;
      for (Variation variation : Variations.of(book, some(book, dice)).singles()) {
        int rank =
            (variation.uncertain() ? 0 : 1_000_000)
                + (variation.then().withheld() ? 100_000 : 0)
                + variation.cellsAway();
        assertTrue(rank >= before, "sorted");
        before = rank;
      }
    }
  }

  /** All pairs of other values are tried by hand on small banks. */
  @Test
  void everyPairThatTurnsTheLeadIsFoundAndNoOther() {
    int turning = 0;
    for (long seed = 421; seed < 427; seed++) {
      turning += turningPairs(seed);
    }
    assertTrue(turning > 50, "turning pairs: " + turning);
  }

  private static int turningPairs(long seed) {
    RuleBook book = RuleBook.of(RandomBank.of(seed, 12, true));
    Dice dice = new Dice(seed);
    int turning = 0;
    for (int round = 0; round < 3; round++) {
      Answers now = RandomBank.part(book, RandomBank.fill(book, Answers.NONE, dice), 2, dice);
      Verdict before = book.verdict(now);
      Variations.Pairs pairs = Variations.of(book, now).pairs(1_000_000);
      assertTrue(pairs.everyPairTried());
      List<String> facts = new ArrayList<>(now.byFact().keySet());
      facts.removeIf(f -> !RandomBank.mayApply(book, now, f));
      for (int i = 0; i < facts.size(); i++) {
        for (int j = i + 1; j < facts.size(); j++) {
          turning += pairs(book, now, before, facts.get(i), facts.get(j), pairs.found());
        }
      }
    }
    return turning;
  }

  private static int pairs(
      RuleBook book, Answers now, Verdict before, String one, String other, List<Variation> found) {
    int turning = 0;
    for (Value first : OtherValues.of(book, now, one)) {
      Answers half = OtherValues.with(now, one, first);
      boolean firstTurns = !book.verdict(half).sameLead(before);
      for (Value second : OtherValues.of(book, now, other)) {
        boolean alone =
            firstTurns || !book.verdict(OtherValues.with(now, other, second)).sameLead(before);
        Verdict then = book.verdict(OtherValues.with(half, other, second));
        Optional<Verdict> foretold =
            found.stream()
                .filter(v -> speaks(v, one, first, now) && speaks(v, other, second, now))
                .map(Variation::then)
                .findFirst();
        if (!alone) {
          assertEquals(
              then.sameLead(before) ? Optional.empty() : Optional.of(then),
              foretold,
              one + " " + first + " " + other + " " + second);
          turning += foretold.isPresent() ? 1 : 0;
        }
      }
    }
    return turning;
  }

  private static boolean speaks(Variation variation, String fact, Value value, Answers now) {
    return variation.steps().stream()
        .anyMatch(
            s ->
                s.fact().equals(fact)
                    && OtherValues.means(s.to(), value, now.value(fact).orElseThrow()));
  }

  @Test
  void whereOnlyTheNumberOfPicksCountsTheChangeIsANumber() {
    TestBank bank = new TestBank().approaches("PLAIN", "SIDE");
    bank.several("cells", List.of("none", "a", "b", "c", "d", "e", "f", "g"));
    bank.computed("reached", Term.Computation.COUNT, "cells");
    bank.rule("plain", always()).points("PLAIN", 1);
    bank.rule("side", test("reached", ">=", 6)).points("SIDE", 3);
    List<Variation> singles =
        Variations.of(bank.book(), answers("cells", List.of("a", "c", "e"))).singles();
    assertEquals(1, singles.size());
    Variation six = singles.get(0);
    assertEquals(new Change.To.Counted(6, 7), six.steps().get(0).to());
    assertEquals(3, six.cellsAway());
    assertEquals(Optional.of("SIDE"), six.then().leader());
  }

  @Test
  void aPairIsFoundWhereNoSingleAnswerTurnsIt() {
    TestBank bank = new TestBank().approaches("A", "B").yesNo("x").yesNo("y").yesNo("z");
    bank.rule("a", always()).points("A", 1);
    bank.rule("b", all(is("x", true), is("y", true))).points("B", 2);
    Variations variations = Variations.of(bank.book(), answers("x", false, "y", false, "z", true));
    assertEquals(List.of(), variations.singles());
    List<Variation> pairs = variations.pairs(100).found();
    assertEquals(1, pairs.size());
    assertEquals(
        List.of("x", "y"), pairs.get(0).steps().stream().map(Variation.Step::fact).toList());
    assertFalse(variations.pairs(0).everyPairTried());
  }

  @Test
  void whatATellingMayHaveMissedByALittleComesFirst() {
    TestBank bank = new TestBank().approaches("A", "B").number("near", 0, 20).yesNo("far");
    bank.rule("a", always()).points("A", 1);
    bank.rule("b", test("near", ">=", 12)).points("B", 2);
    bank.rule("c", is("far", true)).points("B", 2);
    RuleBook book = bank.book();
    List<Variation> told = Variations.of(book, answers("far", false, "near", 10)).singles();
    assertEquals(List.of("near", "far"), facts(told));
    assertTrue(told.get(0).uncertain());
    assertFalse(told.get(1).uncertain());
    List<Variation> measured =
        Variations.of(book, known(Provenance.How.MEASURED, "far", false, "near", 10)).singles();
    assertFalse(measured.get(0).uncertain());
  }

  private static Answers known(Provenance.How how, Object... pairs) {
    Answers known = Answers.NONE;
    for (var entry : answers(pairs).byFact().entrySet()) {
      Answer answer = entry.getValue().answer();
      known =
          known.with(
              entry.getKey(),
              new Answers.Recorded(answer, new Provenance(Provenance.By.PLAYER, how, "")));
    }
    return known;
  }

  private static List<String> facts(List<Variation> variations) {
    return variations.stream().map(v -> v.steps().get(0).fact()).toList();
  }
}
