package closehand.json;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import closehand.bank.Bank;
import closehand.json.snapshot.BankSnapshot;
import java.io.IOException;
import org.junit.jupiter.api.Test;

/** The bank that commands use is the bank that its authors wrote, down to every place in a file. */
class BankSnapshotTest {
  private static Bank fromJson() throws IOException {
    return BankReader.read(new EmbeddedBank(), BankReader.Extent.FOR_USE).bank().orElseThrow();
  }

  @Test
  void whatIsWrittenIsReadBackEqual() throws IOException {
    Bank bank = fromJson();
    assertTrue(bank.rules().size() > 200, "the comparison is of a whole bank");
    assertEquals(bank, BankSnapshot.read(BankSnapshot.write(bank)));
  }

  @Test
  void theSnapshotInsideTheProgramIsThatOfTheJson() throws IOException {
    assertEquals(fromJson(), EmbeddedBank.forUse());
  }

  @Test
  void theSameBankGivesTheSameBytes() throws IOException {
    assertArrayEquals(BankSnapshot.write(fromJson()), BankSnapshot.write(fromJson()));
  }
}
