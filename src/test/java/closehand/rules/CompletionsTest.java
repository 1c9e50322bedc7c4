package closehand.rules;

import static closehand.rules.Say.all;
import static closehand.rules.Say.answers;
import static closehand.rules.Say.is;
import static closehand.rules.Say.when;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import closehand.bank.FactType;
import closehand.bank.Field;
import closehand.bank.Option;
import closehand.interview.Answer;
import closehand.interview.Answers;
import closehand.interview.Dice;
import closehand.interview.Provenance;
import closehand.interview.Value;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** How much an answer would tell, against going through every way the open questions could go. */
class CompletionsTest {
  @Test
  void aQuestionThatDecidesBetweenTwoTellsOneBitAndAnIdleOneNothing() {
    TestBank bank = new TestBank().approaches("A", "B").yesNo("x").yesNo("idle");
    bank.rule("a", is("x", true)).points("A", 2);
    bank.rule("b", is("x", false)).points("B", 2);
    Completions ways = Completions.of(bank.book(), Answers.NONE, 1);
    assertTrue(ways.exact());
    assertEquals(List.of("x"), ways.facts());
    assertEquals(1.0, ways.bits().get("x"), 1e-12);
  }

  @Test
  void twoQuestionsThatOnlyTogetherTellAreBothSeen() {
    TestBank bank = new TestBank().approaches("A", "B").yesNo("x").yesNo("y");
    bank.rule("b", is("x", true)).points("B", 1);
    bank.rule("a", all(is("x", true), is("y", true))).points("A", 3);
    Map<String, Double> bits = Completions.of(bank.book(), Answers.NONE, 1).bits();
    // Nobody leads in a half of the ways, A and B in a quarter each: 1.5 bits are open. Knowing x
    // leaves 0.5 of them, knowing y leaves 1.
    assertEquals(1.0, bits.get("x"), 1e-12);
    assertEquals(0.5, bits.get("y"), 1e-12);
  }

  @Test
  void aQuestionBehindAnotherCountsThatOneToo() {
    TestBank bank = new TestBank().approaches("A").yesNo("door").yesNo("x", when("door", true));
    bank.rule("a", is("x", true)).points("A", 1);
    Completions ways = Completions.of(bank.book(), Answers.NONE, 1);
    assertEquals(List.of("door", "x"), ways.facts());
    assertTrue(ways.bits().get("door") > 0.1);
    assertEquals(List.of(), Completions.of(bank.book(), answers("door", false), 1).facts());
  }

  /** Every way is gone through by hand, value by value, with the rules judging each anew. */
  @ParameterizedTest
  @ValueSource(longs = {501, 502, 503, 504, 505, 506, 507, 508})
  void theFiguresAreThoseOfFullEnumeration(long seed) {
    RuleBook book = RuleBook.of(RandomBank.of(seed, 20, true));
    Dice dice = new Dice(seed);
    int compared = 0;
    for (int round = 0; round < 25; round++) {
      Answers some = RandomBank.part(book, RandomBank.fill(book, Answers.NONE, dice), 5, dice);
      Completions ways = Completions.of(book, some, seed);
      if (ways.exact() && !ways.facts().isEmpty() && values(book, ways.facts()) <= 20_000) {
        Map<String, Double> byHand = new ByHand(book, some, ways.facts()).bits();
        ways.bits().forEach((fact, bits) -> assertEquals(byHand.get(fact), bits, 1e-9, fact));
        compared++;
      }
    }
    assertTrue(compared > 3, "compared: " + compared);
  }

  private static long values(RuleBook book, List<String> facts) {
    long product = 1;
    for (String fact : facts) {
      product *= weighted(book, fact).size();
    }
    return product;
  }

  /** Each value with its weight: every number, option and number of picks equally likely. */
  private static Map<Value, Double> weighted(RuleBook book, String fact) {
    Field field =
        Optional.ofNullable(book.bank().questionnaire().fieldsByFact().get(fact)).orElseThrow();
    Map<Value, Double> weighted = new HashMap<>();
    if (field.type() instanceof FactType.YesNo) {
      weighted.put(new Value.Flag(true), 0.5);
      weighted.put(new Value.Flag(false), 0.5);
    } else if (field.type() instanceof FactType.Amount amount) {
      for (double n = amount.minimum(); n <= amount.maximum(); n++) {
        weighted.put(new Value.Number(n), 1 / (amount.maximum() - amount.minimum() + 1));
      }
    } else if (field.type() instanceof FactType.SeveralOf several) {
      List<String> codes =
          several.options().stream().filter(o -> !o.exclusive()).map(Option::code).toList();
      double share = 1.0 / (codes.size() + 1);
      weighted.put(new Value.Codes(List.of("none")), share);
      for (int set = 1; set < 1 << codes.size(); set++) {
        List<String> picked = new ArrayList<>();
        for (int i = 0; i < codes.size(); i++) {
          if ((set & 1 << i) != 0) {
            picked.add(codes.get(i));
          }
        }
        weighted.put(new Value.Codes(picked), share / choose(codes.size(), picked.size()));
      }
    } else {
      List<Option> options = field.type().choices();
      options.forEach(o -> weighted.put(new Value.Code(o.code()), 1.0 / options.size()));
    }
    return weighted;
  }

  private static double choose(int of, int some) {
    double ways = 1;
    for (int i = 0; i < some; i++) {
      ways = ways * (of - i) / (i + 1);
    }
    return ways;
  }

  /** Full enumeration over values. */
  private static final class ByHand {
    private final RuleBook book;
    private final List<String> facts;
    private final Map<String, Map<String, Map<String, Double>>> joint = new HashMap<>();

    ByHand(RuleBook book, Answers some, List<String> facts) {
      this.book = book;
      this.facts = facts;
      go(0, 1, some);
    }

    private void go(int place, double weight, Answers answers) {
      if (place < facts.size()) {
        String fact = facts.get(place);
        weighted(book, fact)
            .forEach(
                (value, share) ->
                    go(
                        place + 1,
                        weight * share,
                        answers.with(
                            fact,
                            new Answers.Recorded(
                                new Answer.Given(value), Provenance.PLAYER_TOLD))));
        return;
      }
      String leader = leader(answers);
      for (String fact : facts) {
        String answer =
            RandomBank.mayApply(book, answers, fact)
                ? answers.value(fact).orElseThrow().toString()
                : "does not apply";
        joint
            .computeIfAbsent(fact, f -> new HashMap<>())
            .computeIfAbsent(answer, a -> new HashMap<>())
            .merge(leader, weight, Double::sum);
      }
    }

    /** What leads by points, also where suggestions would be withheld. */
    private String leader(Answers answers) {
      return book.advise(answers).standings().stream()
          .filter(s -> s.status().suggested())
          .map(s -> s.approach().id())
          .filter(id -> !id.equals("SET"))
          .findFirst()
          .orElse("nobody");
    }

    Map<String, Double> bits() {
      Map<String, Double> bits = new HashMap<>();
      joint.forEach((fact, table) -> bits.put(fact, bits(table)));
      return bits;
    }

    private static double bits(Map<String, Map<String, Double>> table) {
      Map<String, Double> leaders = new HashMap<>();
      table.values().forEach(row -> row.forEach((l, p) -> leaders.merge(l, p, Double::sum)));
      double sum = entropy(leaders);
      for (Map<String, Double> row : table.values()) {
        double share = row.values().stream().mapToDouble(p -> p).sum();
        Map<String, Double> given = new HashMap<>();
        row.forEach((l, p) -> given.put(l, p / share));
        sum -= share * entropy(given);
      }
      return sum;
    }

    private static double entropy(Map<String, Double> shares) {
      return -shares.values().stream().mapToDouble(p -> p * Math.log(p) / Math.log(2)).sum();
    }
  }

  @Test
  void whereThereAreTooManyWaysSomeAreDrawnAndTheSameSeedDrawsTheSame() {
    TestBank bank = new TestBank().approaches("A", "B").yesNo("big");
    for (int i = 0; i < 20; i++) {
      bank.yesNo("x" + i);
      bank.rule("r" + i, all(is("x" + i, true), is("big", true))).points("A", 1);
    }
    bank.rule("b", is("big", false)).points("B", 3);
    RuleBook book = bank.book();
    Completions ways = Completions.of(book, Answers.NONE, 9);
    assertFalse(ways.exact());
    assertEquals(1.0, ways.bits().get("big"), 0.02);
    assertTrue(ways.bits().get("x3") < 0.01);
    assertEquals(ways.bits(), Completions.of(book, Answers.NONE, 9).bits());
  }
}
