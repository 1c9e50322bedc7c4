package closehand.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;

import closehand.bank.Bank;
import closehand.json.BankReader;
import closehand.json.EmbeddedBank;
import java.io.IOException;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The rules of the bank that travels with the program do what their own examples say. */
class CoreBankRulesTest {
  @Test
  void everyExampleComesOutAsItSays() throws IOException {
    Bank bank = BankReader.read(new EmbeddedBank(), BankReader.Extent.WHOLE).bank().orElseThrow();
    assertEquals(List.of(), Examples.check(bank).stream().map(Object::toString).toList());
  }
}
