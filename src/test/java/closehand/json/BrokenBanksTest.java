package closehand.json;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import closehand.bank.Bank;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/**
 * Every way of getting a bank wrong is told in plain words, at the right place, all in one pass.
 */
class BrokenBanksTest {
  private static final Path BROKEN = FixtureBank.BANKS.resolve("broken");

  @Test
  void theTinyBankIsSound() throws IOException {
    FixtureBank tiny = new FixtureBank(FixtureBank.TINY);
    assertEquals(List.of(), BankInspection.of(tiny).problems());
    Bank bank = BankReader.read(tiny, BankReader.Extent.WHOLE).bank().orElseThrow();
    assertEquals(4, bank.approaches().size());
    assertEquals(7, bank.rules().size());
  }

  @TestFactory
  Stream<DynamicTest> everyBrokenBankIsToldAbout() throws IOException {
    List<Path> folders = new ArrayList<>();
    try (Stream<Path> found = Files.list(BROKEN)) {
      found.filter(Files::isDirectory).sorted().forEach(folders::add);
    }
    assertTrue(folders.size() >= 45, "broken banks found: " + folders.size());
    return folders.stream()
        .map(f -> DynamicTest.dynamicTest(f.getFileName().toString(), () -> findings(f)));
  }

  private static void findings(Path folder) throws IOException {
    Golden.assertMatches(
        folder.resolve("expected.txt"), BankInspection.of(new FixtureBank(folder)).problems());
  }
}
