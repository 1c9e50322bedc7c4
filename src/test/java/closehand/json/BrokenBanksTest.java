package closehand.json;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import closehand.bank.BankCheck;
import closehand.bank.Problem;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** Every way of getting a bank wrong is told in plain words, at the right place, all in one pass. */
class BrokenBanksTest {
  private static final Path BROKEN = FixtureBank.BANKS.resolve("broken");

  @Test
  void theTinyBankIsSound() throws IOException {
    BankReader.Result result = BankReader.read(new FixtureBank(FixtureBank.TINY));
    assertEquals(List.of(), result.problems());
    assertEquals(List.of(), BankCheck.check(result.bank().orElseThrow()));
    assertEquals(4, result.bank().orElseThrow().approaches().size());
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
    BankReader.Result result = BankReader.read(new FixtureBank(folder));
    List<Problem> findings = new ArrayList<>(result.problems());
    result.bank().map(BankCheck::check).ifPresent(findings::addAll);
    Golden.assertMatches(folder.resolve("expected.txt"), findings);
  }
}
