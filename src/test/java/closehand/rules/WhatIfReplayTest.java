package closehand.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import closehand.bank.Bank;
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
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Giving the other answer really brings what was foretold, and nothing else does. */
class WhatIfReplayTest {
  @ParameterizedTest
  @ValueSource(longs = {301, 302, 303, 304})
  void everyOtherAnswerComesOutAsForetold(long seed) {
    Bank bank = withoutPartStops(RandomBank.of(seed, 25, true));
    RuleBook book = RuleBook.of(bank);
    Dice dice = new Dice(seed);
    int foretold = 0;
    for (int round = 0; round < 8; round++) {
      Answers now = RandomBank.part(book, RandomBank.fill(book, Answers.NONE, dice), 6, dice);
      for (String approach : RandomBank.APPROACHES) {
        List<Change> changes = WhatIf.of(book, now).changes(approach);
        foretold += changes.size();
        for (String fact : now.byFact().keySet()) {
          replay(book, now, fact, approach, changes);
        }
      }
    }
    assertTrue(foretold > 50, "changes foretold: " + foretold);
  }

  /** A stop on a part of the body reaches approaches that its rule does not name. */
  private static Bank withoutPartStops(Bank bank) {
    return new Bank(
        bank.questionnaire(),
        bank.terms(),
        bank.rules().stream()
            .filter(r -> r.effects().cautions().stream().noneMatch(c -> c.cautionClass().stops()))
            .toList(),
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

  private static void replay(
      RuleBook book, Answers now, String fact, String approach, List<Change> changes) {
    Map<Value, Optional<Standing.Status>> others = new HashMap<>();
    for (Value value : others(book, now, fact)) {
      others.put(value, foretold(changes, fact, value, now.value(fact).orElseThrow()));
    }
    Standing.Status before = status(book.advise(now), approach);
    others.forEach(
        (value, foretold) ->
            assertEquals(
                foretold.orElse(before),
                status(book.advise(with(now, fact, value)), approach),
                approach + " " + fact + " " + value));
  }

  private static Answers with(Answers now, String fact, Value value) {
    return now.with(fact, new Answers.Recorded(new Answer.Given(value), Provenance.PLAYER_TOLD));
  }

  private static Standing.Status status(Advice advice, String approach) {
    return AdviceTest.standing(advice, approach).status();
  }

  /** Every other value, of a list of answers every list with one pick more or less. */
  private static List<Value> others(RuleBook book, Answers now, String fact) {
    Field field =
        Optional.ofNullable(book.bank().questionnaire().fieldsByFact().get(fact)).orElseThrow();
    List<Value> others = new ArrayList<>();
    if (field.type() instanceof FactType.YesNo) {
      others.add(new Value.Flag(true));
      others.add(new Value.Flag(false));
    } else if (field.type() instanceof FactType.Amount amount) {
      for (double number = amount.minimum(); number <= amount.maximum(); number++) {
        others.add(new Value.Number(number));
      }
    } else if (field.type() instanceof FactType.SeveralOf) {
      Value.Codes picked = (Value.Codes) now.value(fact).orElseThrow();
      for (Option option : field.type().choices()) {
        others.add(toggled(picked, option));
      }
    } else {
      field.type().choices().forEach(o -> others.add(new Value.Code(o.code())));
    }
    others.removeIf(v -> now.value(fact).equals(Optional.of(v)));
    return others;
  }

  private static Value toggled(Value.Codes picked, Option option) {
    if (option.exclusive()) {
      return new Value.Codes(List.of(option.code()));
    }
    List<String> codes = new ArrayList<>(picked.codes());
    codes.remove("none");
    if (!codes.remove(option.code())) {
      codes.add(option.code());
    }
    return new Value.Codes(codes.isEmpty() ? List.of("none") : codes);
  }

  private static Optional<Standing.Status> foretold(
      List<Change> changes, String fact, Value value, Value now) {
    return changes.stream()
        .filter(c -> c.fact().equals(fact) && means(c.to(), value, now))
        .map(Change::status)
        .findFirst();
  }

  private static boolean means(Change.To to, Value value, Value now) {
    if (to instanceof Change.To.Between range && value instanceof Value.Number number) {
      return range.least() <= number.value() && number.value() <= range.greatest();
    }
    if (to instanceof Change.To.Option option) {
      return value.equals(new Value.Code(option.code()));
    }
    if (to instanceof Change.To.Flag flag) {
      return value.equals(new Value.Flag(flag.value()));
    }
    if (to instanceof Change.To.Picked pick
        && value instanceof Value.Codes then
        && now instanceof Value.Codes before) {
      return then.codes().contains(pick.code()) == pick.picked()
          && before.codes().contains(pick.code()) != pick.picked()
          && (pick.picked() || !then.codes().equals(before.codes()));
    }
    return false;
  }
}
