package closehand.json;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
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
    assertTrue(bank.equals(BankSnapshot.read(BankSnapshot.write(bank))), "something was lost");
  }

  @Test
  void theSnapshotInsideTheProgramIsThatOfTheJson() throws IOException {
    assertTrue(fromJson().equals(EmbeddedBank.forUse()), "the snapshot is not that of the bank");
  }

  @Test
  void theSameBankGivesTheSameBytes() throws IOException {
    assertArrayEquals(BankSnapshot.write(fromJson()), BankSnapshot.write(fromJson()));
  }
}
