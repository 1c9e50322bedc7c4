package closehand.rules;

import static closehand.rules.Outcome.FALSE;
import static closehand.rules.Outcome.OPEN;
import static closehand.rules.Outcome.TRUE;
import static closehand.rules.Say.always;
import static closehand.rules.Say.answers;
import static closehand.rules.Say.anyGame;
import static closehand.rules.Say.everyGame;
import static closehand.rules.Say.has;
import static closehand.rules.Say.is;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import closehand.interview.Answer.Reason;
import closehand.interview.Answers;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Rules about "any game" and "every game" look at the games that are really wanted. */
class GamesTest {
  private static RuleBook rules(TestBank bank) {
    bank.approaches("POINTER");
    bank.rule("any", anyGame(is("game.cursor", "yes"))).points("POINTER", 2);
    bank.rule("every", everyGame(is("game.cursor", "yes")));
    bank.rule("some", anyGame(always()));
    return bank.book();
  }

  private static RuleBook book() {
    TestBank bank = new TestBank();
    for (int slot = 1; slot <= 3; slot++) {
      bank.one("games." + slot + ".genre", List.of("RPG", "RAC", "none"));
      bank.one("games." + slot + ".cursor", List.of("yes", "no"));
    }
    return rules(bank);
  }

  @Test
  void oneGameSettlesAnyAndOneSettlesNotEvery() {
    RuleBook book = book();
    Answers two =
        answers(
            "games.1.genre",
            "RPG",
            "games.1.cursor",
            "no",
            "games.2.genre",
            "RAC",
            "games.2.cursor",
            "yes",
            "games.3.genre",
            "none");
    outcomes(book, two, TRUE, FALSE, TRUE);
    assertEquals(List.of(1, 2), book.games(two));
    outcomes(book, Say.with(two, "games.1.cursor", "yes"), TRUE, TRUE, TRUE);
    outcomes(book, Say.with(two, "games.2.genre", "none"), FALSE, FALSE, TRUE);
  }

  @Test
  void noGameAtAllIsNotEveryGame() {
    RuleBook book = book();
    Answers none = answers("games.1.genre", "none", "games.2.genre", "none");
    none = Say.with(none, "games.3.genre", "none");
    outcomes(book, none, FALSE, FALSE, FALSE);
    assertEquals(List.of(), book.games(none));
  }

  @Test
  void aSlotNotYetAskedMayHoldAGame() {
    RuleBook book = book();
    Answers one = answers("games.1.genre", "RPG", "games.1.cursor", "no", "games.3.genre", "none");
    outcomes(book, one, OPEN, FALSE, TRUE);
    assertEquals(List.of("games.2.genre", "games.2.cursor"), book.find(0, one).waitsFor());
    assertEquals(List.of(1), book.games(one));
    outcomes(book, answers("games.1.genre", Reason.DECLINED), OPEN, OPEN, OPEN);
  }

  @Test
  void oneGameAloneIsJudgedAsIfItWereTheOnlyOne() {
    RuleBook book = book();
    Answers two =
        answers(
            "games.1.genre",
            "RPG",
            "games.1.cursor",
            "no",
            "games.2.genre",
            "RAC",
            "games.2.cursor",
            "yes");
    assertEquals(0, book.advise(two, 1).standings().get(0).points());
    assertEquals(2, book.advise(two, 2).standings().get(0).points());
    assertEquals(TRUE, book.advise(two, 2).findings().get(1).outcome());
    assertEquals(FALSE, book.advise(two).findings().get(1).outcome());
    Finding alone = book.advise(two, 1).findings().get(0);
    assertEquals(FALSE, alone.outcome());
    assertEquals(List.of("games.1.cursor"), alone.supportedBy(), "the other game plays no part");
    assertThrows(IllegalArgumentException.class, () -> book.advise(two, 0));
    assertThrows(IllegalArgumentException.class, () -> book.advise(two, 4));
  }

  @Test
  void aBankThatNeverAsksForGamesHasNone() {
    TestBank bank = new TestBank().yesNo("a");
    bank.rule("R", anyGame(has("game.options", "pause")));
    assertEquals(FALSE, bank.book().find(0, Answers.NONE).outcome());
    assertEquals(List.of(), bank.book().games(Answers.NONE));
  }

  private static void outcomes(RuleBook book, Answers answers, Outcome... expected) {
    for (int rule = 0; rule < expected.length; rule++) {
      assertEquals(expected[rule], book.find(rule, answers).outcome(), "rule " + rule);
    }
  }
}
