package closehand.rules;

import static closehand.rules.Say.test;

import closehand.bank.Bank;
import closehand.bank.CautionClass;
import closehand.bank.Condition;
import closehand.bank.EnableWhen;
import closehand.bank.EnableWhen.Operator;
import closehand.bank.FactType;
import closehand.bank.Field;
import closehand.bank.Term.Computation;
import closehand.interview.Answer;
import closehand.interview.Answers;
import closehand.interview.Dice;
import closehand.interview.Provenance;
import closehand.interview.Value;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A bank by chance, the same for the same seed. No single comparison holds or not by its range
 * alone, so that engines that know no ranges must agree on it.
 */
final class RandomBank {
  static final List<String> APPROACHES = List.of("SET", "A", "B", "C", "D", "E");

  private static final List<String> CODES = List.of("p", "q", "r", "s", "t");

  private final Dice dice;
  private final boolean gated;
  private final TestBank bank = new TestBank();
  private final Map<String, FactType> facts = new LinkedHashMap<>();
  private final Map<String, Integer> sizes = new LinkedHashMap<>();
  private final List<String> numbers = new ArrayList<>();
  private final List<String> derived = new ArrayList<>();

  /**
   * A bank with questions, terms and rules.
   *
   * @param gated whether some questions apply only after certain answers
   */
  static Bank of(long seed, int rules, boolean gated) {
    return new RandomBank(new Dice(seed), gated).make(rules);
  }

  private RandomBank(Dice dice, boolean gated) {
    this.dice = dice;
    this.gated = gated;
  }

  private Bank make(int rules) {
    questions();
    bank.max("n.max", "n0", "n1", "n2").min("n.min", "n1", "n2", "n3");
    bank.max("s.max", "s0", "s1").max("all.max", "n.max", "n3");
    bank.computed("m.count", Computation.COUNT, "m0");
    numbers.addAll(List.of("n.max", "n.min", "all.max"));
    for (int i = 0; i < 4; i++) {
      String id = "t" + i;
      bank.derived(id, condition(2));
      derived.add(id);
    }
    bank.approach("SET", "settings", "none", 0);
    bank.approaches(APPROACHES.subList(1, APPROACHES.size()).toArray(new String[0]));
    bank.cautions("C-CARE", "C-PART");
    for (int i = 0; i < rules; i++) {
      rule("R" + i);
    }
    return bank.build();
  }

  private void questions() {
    for (int i = 0; i < 4; i++) {
      number("n" + i);
      yesNo("y" + i);
      one("k" + i, 3 + dice.below(3));
      if (i < 2) {
        scale("s" + i);
        several("m" + i);
      }
    }
  }

  private void number(String fact) {
    bank.number(fact, 0, 10, gate());
    facts.put(fact, new FactType.Amount(0, 10, 0, ""));
    numbers.add(fact);
  }

  private void yesNo(String fact) {
    bank.yesNo(fact, gate());
    facts.put(fact, new FactType.YesNo());
  }

  private void one(String fact, int options) {
    bank.one(fact, CODES.subList(0, options), gate());
    facts.put(fact, new FactType.OneOf(List.of()));
    sizes.put(fact, options);
  }

  private void scale(String fact) {
    bank.scale(fact, List.of(0, 1, 2, 3), gate());
    facts.put(fact, new FactType.Amount(0, 3, 0, ""));
  }

  private void several(String fact) {
    bank.several(fact, List.of("none", "p", "q", "r"), gate());
    facts.put(fact, new FactType.SeveralOf(List.of()));
  }

  private EnableWhen[] gate() {
    if (!gated || facts.isEmpty() || !dice.oneIn(3)) {
      return new EnableWhen[0];
    }
    EnableWhen first = gateTest();
    return dice.oneIn(3)
        ? new EnableWhen[] {Say.whenAny(first, gateTest())}
        : new EnableWhen[] {first};
  }

  private EnableWhen gateTest() {
    String fact = dice.of(List.copyOf(facts.keySet()));
    FactType type = facts.get(fact);
    if (dice.oneIn(6)) {
      return Say.when(fact, Operator.EXISTS, true);
    }
    if (type instanceof FactType.Amount amount) {
      return Say.when(fact, Operator.AT_LEAST, 1 + dice.below((int) amount.maximum()));
    }
    Operator equality = dice.oneIn(3) ? Operator.NOT_EQUAL : Operator.EQUAL;
    if (type instanceof FactType.YesNo) {
      return Say.when(fact, equality, dice.oneIn(2));
    }
    return Say.when(fact, equality, type instanceof FactType.OneOf ? code(fact) : "q");
  }

  private String code(String fact) {
    return CODES.get(dice.below(sizes.getOrDefault(fact, 0)));
  }

  /** A condition of at most so many levels of connectives. */
  private Condition condition(int levels) {
    if (levels == 0 || dice.oneIn(4)) {
      return leaf();
    }
    if (dice.oneIn(5)) {
      return Say.not(condition(levels - 1));
    }
    Condition[] parts = new Condition[2 + dice.below(3)];
    for (int i = 0; i < parts.length; i++) {
      parts[i] = condition(levels - 1);
    }
    return switch (dice.below(3)) {
      case 0 -> Say.all(parts);
      case 1 -> Say.any(parts);
      default -> Say.atLeast(1 + dice.below(parts.length), parts);
    };
  }

  private Condition leaf() {
    switch (dice.below(8)) {
      case 0:
        return threshold("s.max", 3);
      case 1:
        return threshold("m.count", 3);
      case 2:
        return threshold(dice.of(numbers), 10);
      case 3:
        if (!derived.isEmpty()) {
          return Say.is(dice.of(derived), dice.oneIn(2));
        }
        return threshold(dice.of(numbers), 10);
      default:
        return leaf(dice.of(List.copyOf(facts.keySet())));
    }
  }

  private Condition leaf(String fact) {
    FactType type = facts.get(fact);
    if (type instanceof FactType.Amount amount) {
      return threshold(fact, (int) amount.maximum());
    }
    if (type instanceof FactType.YesNo) {
      return Say.is(fact, dice.oneIn(2));
    }
    if (type instanceof FactType.SeveralOf) {
      return Say.has(fact, dice.of(List.of("none", "p", "q", "r")));
    }
    List<String> some = new ArrayList<>(CODES.subList(0, sizes.getOrDefault(fact, 0)));
    some.remove(dice.below(some.size()));
    return dice.oneIn(2)
        ? Say.is(fact, code(fact))
        : test(fact, "in", some.subList(0, 1 + dice.below(some.size())));
  }

  private Condition threshold(String id, int highest) {
    return switch (dice.below(4)) {
      case 0 -> test(id, "<", 1 + dice.below(highest));
      case 1 -> test(id, "<=", dice.below(highest));
      case 2 -> test(id, ">", dice.below(highest));
      default -> test(id, ">=", 1 + dice.below(highest));
    };
  }

  private void rule(String id) {
    TestBank.TestRule rule = bank.rule(id, condition(3));
    if (dice.oneIn(3)) {
      rule.unless(condition(2));
    }
    for (int i = dice.below(3); i >= 0; i--) {
      int points = 1 + dice.below(3);
      rule.points(dice.of(APPROACHES), dice.oneIn(3) ? -points : points);
    }
    if (dice.oneIn(6)) {
      rule.excludes(dice.of(APPROACHES));
    }
    if (dice.oneIn(5)) {
      rule.raises("C-CARE", CautionClass.CARE);
    }
    if (dice.oneIn(20)) {
      rule.raises("C-PART", CautionClass.STOP_PART);
    }
  }

  /**
   * Answers that somebody could give in this order: no question is answered that an earlier answer
   * switched off. Keeps {@code known}.
   */
  static Answers fill(RuleBook book, Answers known, Dice dice) {
    Answers answers = known;
    for (Field field : book.bank().questionnaire().fieldsByFact().values()) {
      if (answers.answer(field.fact()).isEmpty() && mayApply(book, answers, field.fact())) {
        Value value = dice.value(field.type());
        answers =
            answers.with(
                field.fact(),
                new Answers.Recorded(new Answer.Given(value), Provenance.PLAYER_TOLD));
      }
    }
    return answers;
  }

  /** Whether the answers leave it possible that a question applies. */
  static boolean mayApply(RuleBook book, Answers answers, String fact) {
    long[] state = book.program().settle(book.base(answers));
    return state[book.program().table().asked(fact).howSlot()] != Node.NOT_APPLICABLE;
  }

  /**
   * A share of the answers, by chance. An answer that hangs on a question not answered any more
   * goes too, since that question could still set it aside.
   */
  static Answers part(RuleBook book, Answers whole, int oneInDropped, Dice dice) {
    Answers part = Answers.NONE;
    for (Field field : book.bank().questionnaire().fieldsByFact().values()) {
      boolean kept = whole.answer(field.fact()).isPresent() && !dice.oneIn(oneInDropped);
      if (kept && surelyApplies(book, part, field.fact())) {
        part = taking(part, field.fact(), whole);
      }
    }
    return part;
  }

  private static boolean surelyApplies(RuleBook book, Answers answers, String fact) {
    long[] state = book.program().settle(book.base(answers));
    return state[book.program().table().asked(fact).howSlot()] >= 0;
  }

  /** The same answers with one more, taken from {@code whole}. */
  static Answers taking(Answers answers, String fact, Answers whole) {
    return answers.with(
        fact, new Answers.Recorded(whole.answer(fact).orElseThrow(), Provenance.PLAYER_TOLD));
  }

  /** The facts in an order by chance. */
  static List<String> shuffled(Answers answers, Dice dice) {
    List<String> facts = new ArrayList<>(answers.byFact().keySet());
    for (int i = facts.size() - 1; i > 0; i--) {
      Collections.swap(facts, i, dice.below(i + 1));
    }
    return facts;
  }
}
