package closehand.json;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The bank that travels with the program reads without a single problem. */
class CoreBankTest {
  @Test
  void readsCleanly() throws IOException {
    BankReader.Result result = BankReader.read(new EmbeddedBank(), BankReader.Extent.WHOLE);
    assertEquals(List.of(), result.problems());
    assertEquals(27, result.bank().orElseThrow().approaches().size());
    assertEquals(14, result.bank().orElseThrow().games().size());
  }

  @Test
  void isSound() throws IOException {
    assertEquals(
        List.of(),
        closehand.bank.BankCheck.check(
            BankReader.read(new EmbeddedBank(), BankReader.Extent.WHOLE).bank().orElseThrow()));
  }
}
