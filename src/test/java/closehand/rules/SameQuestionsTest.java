package closehand.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import closehand.bank.Bank;
import closehand.interview.Answers;
import closehand.interview.Dice;
import closehand.interview.Enablement;
import closehand.json.BankReader;
import closehand.json.EmbeddedBank;
import java.io.IOException;
import org.junit.jupiter.api.Test;

/** The rules set aside just those answers that the interview does not ask for. */
class SameQuestionsTest {
  @Test
  void whatAppliesIsTheSameForBoth() throws IOException {
    Bank bank = BankReader.read(new EmbeddedBank(), BankReader.Extent.FOR_USE).bank().orElseThrow();
    RuleBook book = RuleBook.of(bank);
    Dice dice = new Dice(61);
    int switchedOff = 0;
    for (int round = 0; round < 20; round++) {
      Answers answers = RandomBank.fill(book, Answers.NONE, dice);
      Enablement enablement = Enablement.of(bank.questionnaire(), answers);
      long[] state = book.program().settle(book.base(answers));
      for (Asked asked : book.program().table().all()) {
        boolean applies = state[asked.howSlot()] != Node.NOT_APPLICABLE;
        assertEquals(enablement.applies(asked.fact()), applies, asked.fact());
        switchedOff += applies ? 0 : 1;
      }
    }
    assertTrue(switchedOff > 100, "switched off: " + switchedOff);
  }
}
