package closehand.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import closehand.bank.Bank;
import closehand.casefile.CaseStore;
import closehand.casefile.LocalDisk;
import closehand.interview.Interview;
import closehand.interview.Message;
import closehand.interview.Provenance;
import closehand.interview.Value;
import closehand.json.BankReader;
import closehand.json.EmbeddedBank;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** One case open in two windows: what one saved is not wiped out by the other. */
class TwoWindowsTest {
  private static final Clock CLOCK =
      Clock.fixed(Instant.parse("2026-11-25T10:00:00Z"), ZoneOffset.UTC);

  @TempDir private Path folder = Path.of(".");

  @Test
  void theSecondWindowDoesNotSaveOverTheFirst() throws IOException {
    Bank bank = BankReader.read(new EmbeddedBank(), BankReader.Extent.FOR_USE).bank().orElseThrow();
    CaseStore store = new CaseStore(folder, new LocalDisk());
    Interview begun =
        Interview.begin(bank.questionnaire(), Interview.Route.CORE, Provenance.By.VOLUNTEER);
    StoredCase one =
        new StoredCase(folder, store, bank, CLOCK, "wren-alder", "2026-11-25T10:00:00Z");
    one.save(begun);
    StoredCase other =
        new StoredCase(folder, store, bank, CLOCK, "wren-alder", "2026-11-25T10:00:00Z");
    one.save(begun.after(new Message.Give(new Value.Code("yes"), Provenance.PLAYER_TOLD)));
    Path file = store.path("wren-alder");
    Files.setLastModifiedTime(file, FileTime.from(Instant.parse("2026-11-25T11:00:00Z")));
    String saved = Files.readString(file);

    assertThrows(StoredCase.ChangedElsewhere.class, () -> other.save(begun));
    assertEquals(saved, Files.readString(file));
  }
}
