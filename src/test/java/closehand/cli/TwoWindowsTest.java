package closehand.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import closehand.bank.Bank;
import closehand.casefile.CaseLock;
import closehand.casefile.Holder;
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
import java.nio.file.attribute.FileTime;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** One case open in two windows: what one saved is not wiped out by the other. */
class TwoWindowsTest {
  private static final Clock CLOCK =
      Clock.fixed(Instant.parse("2026-11-25T10:00:00Z"), ZoneOffset.UTC);

  @TempDir private Path folder = Path.of(".");

  @Test
  void whereThereAreNoLocksTheSecondWindowDoesNotSaveOverTheFirst() throws IOException {
    Bank bank = BankReader.read(new EmbeddedBank(), BankReader.Extent.FOR_USE).bank().orElseThrow();
    Cases cases = Cases.at(folder);
    Interview begun =
        Interview.begin(bank.questionnaire(), Interview.Route.CORE, Provenance.By.VOLUNTEER);
    StoredCase one = window(cases, bank, begun);
    one.save(begun);
    StoredCase other = window(cases, bank, begun);
    one.save(begun.after(new Message.Give(new Value.Code("yes"), Provenance.PLAYER_TOLD)));
    Path file = cases.store().path("wren-alder");
    Files.setLastModifiedTime(file, FileTime.from(Instant.parse("2026-11-25T11:00:00Z")));
    String saved = Files.readString(file);

    assertThrows(StoredCase.ChangedElsewhere.class, () -> other.save(begun));
    assertEquals(saved, Files.readString(file));
  }

  private static StoredCase window(Cases cases, Bank bank, Interview interview) {
    SavedCase.BankStamp stamp = SavedCase.BankStamp.of(bank.questionnaire(), bank.fingerprint());
    String now = "2026-11-25T10:00:00Z";
    SavedCase saved = SavedCase.of("wren-alder", stamp, interview, now, now);
    return new StoredCase(
        cases,
        bank,
        CLOCK,
        new CaseLock.Taking.Unguarded(),
        CaseDocument.of(saved),
        interview,
        Optional.empty());
  }

  @Test
  void theSecondWindowIsToldWhoHasTheCaseAndChangesNothing() throws IOException {
    World.run("1\n1\n", "interview", "--home", folder.toString());
    String name = Cases.at(folder).store().names().get(0);
    String before = Files.readString(Cases.at(folder).store().path(name));
    Holder first = new Holder("kit", 4711, "2026-11-25T09:30:00Z");
    CaseLock.Taking taking = Cases.at(folder).store().lock(name, first);

    World second = World.run("1\n2\n", "interview", name, "--home", folder.toString());
    assertEquals(ExitCode.CANNOT_CREATE, second.code(), second.output());
    String said = second.output().replace('\n', ' ');
    assertTrue(
        said.contains("open in another window by kit, process 4711, since today 09:30."), said);
    assertEquals(before, Files.readString(Cases.at(folder).store().path(name)));

    World looks = World.typed("1\nq\n", "interview", name, "--home", folder.toString());
    assertEquals(ExitCode.DONE, looks.code(), looks.error());
    assertTrue(looks.output().contains("not medical advice"), looks.output());
    assertEquals(before, Files.readString(Cases.at(folder).store().path(name)));

    assertInstanceOf(CaseLock.Taking.Taken.class, taking).lock().close();
    World third = World.run("1\n2\n", "interview", name, "--home", folder.toString());
    assertEquals(ExitCode.UNFINISHED, third.code(), third.output());
  }

  @Test
  void theLockOfADeadProcessKeepsNobodyOut() throws IOException {
    World.run("1\n1\n", "interview", "--home", folder.toString());
    String name = Cases.at(folder).store().names().get(0);
    Files.writeString(folder.resolve(name + ".lock"), "kit\n4711\n2026-11-25T09:30:00Z\n");
    World next = World.run("1\n2\n", "interview", name, "--home", folder.toString());
    assertEquals(ExitCode.UNFINISHED, next.code(), next.output());
    assertFalse(Files.exists(folder.resolve(name + ".lock")));
  }

  @Test
  void aSavedCaseSaysWhereItWasLeftAndIsOnlyDiscardedWhenItsNameIsTyped() throws IOException {
    World.run("1\n1\ny\n", "interview", "--home", folder.toString());
    String name = Cases.at(folder).store().names().get(0);
    World asked = World.typed("3\n\n2\nq\n", "interview", name, "--home", folder.toString());
    String said = asked.output().replace('\n', ' ');
    assertTrue(
        said.contains(
            "Case " + name + ", left at question 2 of about 72, today 10:00, bank 1.0.0: go on?"),
        said);
    assertTrue(said.contains("It is kept."), said);
    assertEquals(Optional.of(name), Cases.at(folder).store().names().stream().findFirst());
    World gone = World.typed("3\n" + name + "\n", "interview", name, "--home", folder.toString());
    assertEquals(ExitCode.DONE, gone.code());
    try (var files = Files.list(folder)) {
      assertEquals(0, files.count());
    }
  }
}
