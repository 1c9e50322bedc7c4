package closehand.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import closehand.bank.Bank;
import closehand.casefile.CaseLock;
import closehand.casefile.CaseStore;
import closehand.casefile.Passphrases;
import closehand.interview.Interview;
import closehand.interview.Message;
import closehand.interview.Provenance;
import closehand.interview.SavedCase;
import closehand.interview.Value;
import closehand.json.BankReader;
import closehand.json.CaseDocument;
import closehand.json.EmbeddedBank;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CopyOnWriteArrayList;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Saving beside a face: nothing waits for the disk, and nothing is lost for that. */
class SavingSoonTest {
  private static final List<Value> VALUES =
      List.of(
          new Value.Code("yes"),
          new Value.Code("room"),
          new Value.Flag(true),
          new Value.Flag(true),
          new Value.Code("self"),
          new Value.Code("18+"));

  @TempDir private Path folder = Path.of(".");

  private static Bank bank() throws IOException {
    return BankReader.read(new EmbeddedBank(), BankReader.Extent.FOR_USE).bank().orElseThrow();
  }

  private static StoredCase stored(Path place, Bank bank, Interview interview) {
    SavedCase.BankStamp stamp = SavedCase.BankStamp.of(bank.questionnaire(), bank.fingerprint());
    String now = "2026-11-25T10:00:00Z";
    SavedCase saved = SavedCase.of("wren-alder", stamp, interview, now, now);
    return new StoredCase(
        Cases.at(place),
        bank,
        Clock.systemUTC(),
        new CaseLock.Taking.Unguarded(),
        CaseDocument.of(saved),
        interview,
        Optional.empty());
  }

  private static Interview begun(Bank bank) {
    return Interview.begin(bank.questionnaire(), Interview.Route.CORE, Provenance.By.VOLUNTEER);
  }

  @Test
  void everyAnswerGivenInQuickSuccessionIsThereWhenTheCaseIsClosed() throws IOException {
    Bank bank = bank();
    Interview now = begun(bank);
    StoredCase stored = stored(folder, bank, now);
    for (Value value : VALUES) {
      now = now.after(new Message.Give(value, Provenance.PLAYER_TOLD));
      stored.soon().save(now);
    }
    stored.close();
    CaseStore.Opened opened =
        Cases.at(folder).store().open("wren-alder", bank.questionnaire(), Passphrases.NONE);
    CaseDocument found = assertInstanceOf(CaseStore.Opened.Case.class, opened).file().document();
    assertEquals(now.answers(), found.saved().answers());
    assertEquals(VALUES.size(), found.record().history().size());
    assertEquals(0, stored.unsavedChanges());
  }

  @Test
  void troubleIsToldAtTheNextSaveAndOverOnceItIsOver() throws IOException {
    Bank bank = bank();
    Interview now = begun(bank).after(new Message.Give(VALUES.get(0), Provenance.PLAYER_TOLD));
    Path place = Files.writeString(folder.resolve("cases"), "in the way");
    StoredCase stored = stored(place, bank, begun(bank));
    stored.soon().save(now);
    stored.soon().finish();
    Interview later = now;
    assertThrows(IOException.class, () -> stored.soon().save(later));
    stored.soon().finish();
    assertEquals(1, stored.unsavedChanges());
    Files.delete(place);
    assertThrows(IOException.class, () -> stored.soon().save(later));
    stored.soon().finish();
    stored.soon().save(later);
    stored.soon().finish();
    assertEquals(0, stored.unsavedChanges());
  }

  @Test
  void aFaceIsWokenAsSoonAsASaveFailsAndOnceMoreWhenItIsOver() throws IOException {
    Bank bank = bank();
    Interview now = begun(bank).after(new Message.Give(VALUES.get(0), Provenance.PLAYER_TOLD));
    Path place = Files.writeString(folder.resolve("cases"), "in the way");
    StoredCase stored = stored(place, bank, begun(bank));
    List<Boolean> woken = new CopyOnWriteArrayList<>();
    SavingSoon soon = stored.soon();
    soon.whenTroubleChanges(() -> woken.add(soon.unsaved().isPresent()));
    soon.save(now);
    soon.finish();
    assertEquals(List.of(true), woken);
    Files.delete(place);
    assertThrows(IOException.class, () -> soon.save(now));
    soon.finish();
    assertEquals(List.of(true, false), woken);
    soon.save(now);
    soon.finish();
    assertEquals(List.of(true, false), woken, "nobody is woken for a save like any other");
  }

  @Test
  void neverMoreThanTheLastAnswerIsMissingOnTheDisk() throws IOException {
    Bank bank = bank();
    Interview now = begun(bank);
    StoredCase stored = stored(folder, bank, now);
    for (Value value : VALUES) {
      now = now.after(new Message.Give(value, Provenance.PLAYER_TOLD));
      stored.soon().save(now);
      assertTrue(stored.unsavedChanges() <= 1, "unsaved: " + stored.unsavedChanges());
    }
    stored.close();
  }

  @Test
  void deletingWaitsForTheLastSave() throws IOException {
    Bank bank = bank();
    Interview now = begun(bank).after(new Message.Give(VALUES.get(0), Provenance.PLAYER_TOLD));
    StoredCase stored = stored(folder, bank, begun(bank));
    stored.soon().save(now);
    stored.soon().delete();
    stored.close();
    assertFalse(Files.exists(folder.resolve("wren-alder.json")));
  }
}
