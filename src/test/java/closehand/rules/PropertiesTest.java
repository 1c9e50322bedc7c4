package closehand.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import closehand.bank.Bank;
import closehand.bank.Rule;
import closehand.interview.Answer;
import closehand.interview.Answers;
import closehand.interview.Dice;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What must hold of any bank and any answers, tried on banks by chance. */
class PropertiesTest {
  private static final int RULES = 40;

  private static Bank bank(long seed) {
    return RandomBank.of(seed, RULES, true);
  }

  private static List<Outcome> outcomes(RuleBook book, Answers answers) {
    return book.advise(answers).findings().stream().map(Finding::outcome).toList();
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
  void moreAnswersOnlySettle(long seed) {
    RuleBook book = RuleBook.of(bank(seed));
    Dice dice = new Dice(seed);
    for (int round = 0; round < 20; round++) {
      Answers whole = RandomBank.fill(book, Answers.NONE, dice);
      Answers known = Answers.NONE;
      List<Outcome> before = outcomes(book, known);
      for (String fact : RandomBank.shuffled(whole, dice)) {
        known = RandomBank.taking(known, fact, whole);
        List<Outcome> after = outcomes(book, known);
        for (int rule = 0; rule < RULES; rule++) {
          if (before.get(rule) != Outcome.OPEN) {
            assertEquals(before.get(rule), after.get(rule), "rule " + rule + " after " + fact);
          }
        }
        before = after;
      }
      assertTrue(before.stream().noneMatch(o -> o == Outcome.OPEN), "all answered, all settled");
    }
  }

  @Test
  void theOrderOfAnswersDoesNotMatter() {
    RuleBook book = RuleBook.of(bank(11));
    Dice dice = new Dice(11);
    for (int round = 0; round < 50; round++) {
      Answers whole = RandomBank.part(book, RandomBank.fill(book, Answers.NONE, dice), 3, dice);
      Answers shuffled = Answers.NONE;
      for (String fact : RandomBank.shuffled(whole, dice)) {
        shuffled = RandomBank.taking(shuffled, fact, whole);
      }
      assertEquals(book.advise(whole), book.advise(shuffled));
    }
  }

  @Test
  void theOrderOfRulesChangesOnlyTheOrderOfReasons() {
    Bank bank = bank(12);
    RuleBook book = RuleBook.of(bank);
    RuleBook turned = RuleBook.of(reversed(bank));
    Dice dice = new Dice(12);
    for (int round = 0; round < 50; round++) {
      Answers answers = RandomBank.part(book, RandomBank.fill(book, Answers.NONE, dice), 3, dice);
      Advice advice = book.advise(answers);
      Advice other = turned.advise(answers);
      assertEquals(byRule(advice), byRule(other));
      assertEquals(summary(advice), summary(other));
      assertEquals(advice.firm(), other.firm());
    }
  }

  private static Bank reversed(Bank bank) {
    List<Rule> rules = new ArrayList<>(bank.rules());
    Collections.reverse(rules);
    return new Bank(
        bank.questionnaire(),
        bank.terms(),
        rules,
        bank.themes(),
        bank.approaches(),
        bank.costClasses(),
        bank.mixes(),
        bank.games(),
        bank.cautions(),
        bank.sources(),
        bank.planFigures(),
        bank.tasks(),
        bank.fingerprint());
  }

  private static Map<String, Finding> byRule(Advice advice) {
    Map<String, Finding> byRule = new TreeMap<>();
    advice.findings().forEach(f -> byRule.put(f.rule().key(), f));
    return byRule;
  }

  private static List<String> summary(Advice advice) {
    return advice.standings().stream()
        .map(
            s ->
                s.approach().id()
                    + s.status()
                    + s.points()
                    + "/"
                    + s.lowest()
                    + "/"
                    + s.highest()
                    + s.waitsFor())
        .toList();
  }

  @ParameterizedTest
  @ValueSource(longs = {21, 22, 23, 24, 25, 26})
  void answeringAllThatARuleWaitsForSettlesIt(long seed) {
    RuleBook book = RuleBook.of(bank(seed));
    Dice dice = new Dice(seed);
    int tried = 0;
    for (int round = 0; round < 60; round++) {
      Answers part = RandomBank.part(book, RandomBank.fill(book, Answers.NONE, dice), 2, dice);
      for (int rule = 0; rule < RULES; rule++) {
        Finding open = book.find(rule, part);
        if (open.outcome() == Outcome.OPEN) {
          Answers filled = fillOnly(book, part, open.waitsFor(), dice);
          assertNotEquals(Outcome.OPEN, book.find(rule, filled).outcome(), "rule " + rule);
          tried++;
        }
      }
    }
    assertTrue(tried > 100, "open rules tried: " + tried);
  }

  @ParameterizedTest
  @ValueSource(longs = {31, 32, 33, 34, 35, 36})
  void answeringAllElseSettlesNothing(long seed) {
    RuleBook book = RuleBook.of(RandomBank.of(seed, RULES, false));
    Dice dice = new Dice(seed);
    int tried = 0;
    for (int round = 0; round < 60; round++) {
      Answers part = RandomBank.part(book, RandomBank.fill(book, Answers.NONE, dice), 2, dice);
      for (int rule = 0; rule < RULES; rule++) {
        Finding open = book.find(rule, part);
        if (open.outcome() == Outcome.OPEN) {
          List<String> others = new ArrayList<>(book.program().facts());
          others.removeAll(open.waitsFor());
          Answers filled = fillOnly(book, part, others, dice);
          assertEquals(Outcome.OPEN, book.find(rule, filled).outcome(), "rule " + rule);
          assertEquals(open.waitsFor(), book.find(rule, filled).waitsFor());
          tried++;
        }
      }
    }
    assertTrue(tried > 100, "open rules tried: " + tried);
  }

  private static Answers fillOnly(RuleBook book, Answers known, List<String> facts, Dice dice) {
    Answers whole = RandomBank.fill(book, known, dice);
    Answers filled = known;
    for (String fact : facts) {
      Optional<Answer> answer = whole.answer(fact);
      filled =
          answer.isPresent()
              ? RandomBank.taking(filled, fact, whole)
              : Say.with(filled, fact, Answer.Reason.NOT_APPLICABLE);
    }
    return filled;
  }

  @ParameterizedTest
  @ValueSource(longs = {41, 42, 43, 44, 45, 46, 47, 48})
  void whatIsFirmStandsHoweverTheRestIsAnswered(long seed) {
    RuleBook book = RuleBook.of(RandomBank.of(seed, 14, true));
    Dice dice = new Dice(seed);
    int firm = 0;
    for (int round = 0; round < 150; round++) {
      Answers part =
          RandomBank.part(book, RandomBank.fill(book, Answers.NONE, dice), 2 + dice.below(5), dice);
      Advice advice = book.advise(part);
      if (advice.firm()) {
        firm++;
        for (int fill = 0; fill < 20; fill++) {
          Advice then = book.advise(RandomBank.fill(book, part, dice));
          assertEquals(leader(advice), leader(then), "round " + round);
        }
      }
    }
    assertTrue(firm > 5, "firm ones tried: " + firm);
  }

  private static Optional<String> leader(Advice advice) {
    return advice.standings().stream()
        .filter(s -> s.status().suggested())
        .map(s -> s.approach().id())
        .filter(id -> !id.equals("SET"))
        .findFirst();
  }

  @Test
  void manyThreadsSeeWhatOneSees() {
    RuleBook book = RuleBook.of(bank(51));
    Dice dice = new Dice(51);
    List<Answers> cases =
        IntStream.range(0, 64)
            .mapToObj(
                i -> RandomBank.part(book, RandomBank.fill(book, Answers.NONE, dice), 3, dice))
            .toList();
    List<Advice> expected = cases.stream().map(book::advise).toList();
    List<Advice> shared = cases.stream().map(book::advise).toList();
    IntStream.range(0, 1_280)
        .parallel()
        .forEach(
            i -> {
              assertEquals(expected.get(i % 64), book.advise(cases.get(i % 64)));
              assertEquals(expected.get(i % 64), shared.get(i % 64));
            });
  }
}
