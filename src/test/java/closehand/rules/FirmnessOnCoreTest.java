package closehand.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import closehand.interview.Answers;
import closehand.interview.Dice;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Firm means firm: no way to answer the rest turns it. Provisional means that some way does. */
class FirmnessOnCoreTest {
  private static final int FILLS = 300;
  private static final RuleBook BOOK = RuleBook.of(GoldAnswers.bank());
  private static final Map<String, Answers> PLAYERS = GoldAnswers.of(BOOK.bank());

  /** The players' answers with some left out by chance; warning signs stay answered. */
  private static List<Answers> partly() {
    List<Answers> all = new ArrayList<>();
    PLAYERS.values().forEach(p -> all.add(settled(p)));
    Dice dice = new Dice(77);
    for (Answers player : PLAYERS.values()) {
      for (int round = 0; round < 12; round++) {
        Answers part = player;
        int oneIn = 2 + dice.below(12);
        for (String fact : player.byFact().keySet()) {
          boolean sign = fact.startsWith("safe.") || fact.startsWith("consent.");
          part = !sign && dice.oneIn(oneIn) ? part.without(fact) : part;
        }
        all.add(settled(part));
      }
    }
    return all;
  }

  /** Without answers to questions of which it is open whether they apply. */
  private static Answers settled(Answers part) {
    Answers left = part;
    boolean changed = true;
    while (changed) {
      changed = false;
      long[] state = BOOK.program().settle(BOOK.base(left));
      for (String fact : List.copyOf(left.byFact().keySet())) {
        Node gate = BOOK.program().owners().gate(BOOK.program().table().asked(fact));
        if (gate != null && gate.in(state) == Outcome.OPEN) {
          left = left.without(fact);
          changed = true;
        }
      }
    }
    return left;
  }

  /** What leads once everything open is answered by chance; withheld or not. */
  private static int leader(Answers part, Dice dice) {
    Program program = BOOK.program();
    long[] base = BOOK.base(part);
    for (Asked asked : program.table().all()) {
      if (!asked.valued(base)) {
        asked.put(dice.value(asked.field().type()), base);
        base[asked.howSlot()] = How.state(How.GIVEN);
      }
    }
    Judge judge = BOOK.judge();
    return judge.leader(judge.tally(program.outcomes(program.settle(base))));
  }

  @Test
  void firmOnesSurviveAndProvisionalOnesCanBeTurned() {
    int firm = 0;
    int provisional = 0;
    int overCautious = 0;
    for (Answers part : partly()) {
      Verdict verdict = BOOK.verdict(part);
      long[] state = BOOK.program().settle(BOOK.base(part));
      Outcome[] outcomes = BOOK.program().outcomes(state);
      boolean judged = !verdict.withheld() && !BOOK.judge().notCleared(outcomes);
      int now = BOOK.judge().leader(BOOK.judge().tally(outcomes));
      Dice dice = new Dice(part.byFact().size());
      boolean turned = false;
      for (int fill = 0; fill < FILLS; fill++) {
        boolean turns = leader(part, dice) != now;
        turned |= turns;
        if (verdict.firm()) {
          assertEquals(false, turns, "a firm lead was turned");
        }
      }
      firm += verdict.firm() ? 1 : 0;
      provisional += judged && !verdict.firm() ? 1 : 0;
      overCautious += judged && !verdict.firm() && !turned ? 1 : 0;
    }
    assertTrue(firm >= 10, "firm: " + firm);
    assertTrue(provisional >= 10, "provisional: " + provisional);
    assertTrue(overCautious * 20 <= provisional, overCautious + " of " + provisional);
  }
}
