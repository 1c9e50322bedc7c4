package closehand.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import closehand.bank.Bank;
import closehand.casefile.CaseLock;
import closehand.casefile.CaseStore;
import closehand.casefile.Holder;
import closehand.casefile.LocalDisk;
import closehand.interview.Interview;
import closehand.interview.Provenance;
import closehand.interview.SavedCase;
import closehand.json.CaseDocument;
import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A folder that cannot be written: the interview goes on, says so, and loses nothing silently. */
class TroubledDiskTest {
  @TempDir private Path folder = Path.of(".");

  /** A place in which no folder can be made, since a file stands there. */
  private Path blocked() throws IOException {
    return Files.writeString(folder.resolve("file"), "x").resolve("cases");
  }

  private static String flowing(World world) {
    return world.output().replace('\n', ' ');
  }

  @Test
  void theInterviewGoesOnAndTheAnswersFindAnotherPlace() throws IOException {
    Path other = folder.resolve("stick");
    World world =
        World.typed(
            "\n\n3\n1\n1\ny\n:q\n1\n2\n" + other + "\n",
            "interview",
            "--home",
            blocked().toString());
    String said = flowing(world);
    assertEquals(ExitCode.DONE, world.code(), said);
    assertTrue(said.contains("Nothing can be saved in"), said);
    assertTrue(said.contains("Still not saved."), said);
    assertTrue(said.contains("CON-06."), "the interview goes on: " + said);
    assertTrue(said.contains("not saved. What now?"), said);
    String name = Cases.at(other).store().names().get(0);
    World page = World.run("", "export", name, "--to", "answers", "--home", other.toString());
    assertTrue(page.output().contains("\"session.helperPresent\" : true"), page.output());
    try (Stream<Path> files = Files.list(other)) {
      assertFalse(files.anyMatch(f -> f.toString().endsWith(".lock")));
    }
  }

  /** A case in the other folder that another window has open is not written over. */
  @Test
  void aHeldNameInTheOtherPlaceIsRefusedAndTheCaseStaysHere() throws IOException {
    Path other = Files.createDirectory(folder.resolve("stick"));
    String name = "wren-alder";
    Bank bank = BankSource.load(Optional.empty()).bank().orElseThrow();
    Interview interview =
        Interview.begin(bank.questionnaire(), Interview.Route.CORE, Provenance.By.HELPER);
    SavedCase saved =
        SavedCase.of(
            name,
            SavedCase.BankStamp.of(bank.questionnaire(), bank.fingerprint()),
            interview,
            "2026-11-25T10:00:00Z",
            "2026-11-25T10:00:00Z");
    Clock clock = Clock.fixed(Instant.parse("2026-11-25T10:00:00Z"), ZoneOffset.UTC);
    Cases here = Cases.at(folder.resolve("here"));
    Holder me = new Holder("sam", 1, "2026-11-25T10:00:00Z");
    try (StoredCase kept =
            new StoredCase(
                here,
                bank,
                clock,
                here.store().lock(name, me),
                CaseDocument.of(saved),
                interview,
                Optional.empty());
        CaseLock held = ((CaseLock.Taking.Taken) Cases.at(other).store().lock(name, me)).lock()) {
      assertThrows(IOException.class, () -> kept.moveTo(other));
      assertFalse(Files.exists(other.resolve(name + ".json")), "nothing is written there");
      held.close();
      kept.moveTo(other);
      assertTrue(Files.exists(other.resolve(name + ".json")));
      assertFalse(Files.exists(folder.resolve("here").resolve(name + ".lock")), "let go here");
      assertTrue(Files.readString(other.resolve(name + ".lock")).contains("2026-11-25T10:00:00"));
    }
    assertFalse(Files.exists(other.resolve(name + ".lock")));
  }

  @Test
  void leavingWithoutTheAnswersIsSaidTwice() throws IOException {
    World world =
        World.typed("\n\n3\n1\n:q\n3\nno\n3\nlose\n", "interview", "--home", blocked().toString());
    assertEquals(ExitCode.INPUT_OUTPUT, world.code());
    String said = flowing(world);
    assertTrue(said.contains("Type lose to leave all the same."), said);
    assertTrue(said.contains("2 changes are lost."), said);
  }

  @Test
  void aScriptSaysWhatIsNotSavedAndFails() throws IOException {
    World world = World.run("1\n1\n", "interview", "--home", blocked().toString());
    assertEquals(ExitCode.INPUT_OUTPUT, world.code());
    assertTrue(flowing(world).contains("2 changes are not saved."), flowing(world));
  }

  @Test
  void theReasonIsSaidInPlainWords() {
    Function<IOException, String> words = e -> Trouble.of(e, folder);
    assertTrue(
        words
            .apply(new FileSystemException("a", null, "No space left on device"))
            .endsWith("the disk is full."));
    assertTrue(
        words
            .apply(new FileSystemException("a", null, "Disk quota exceeded"))
            .endsWith("the disk is full."));
    assertTrue(
        words
            .apply(new FileSystemException("a", null, "Read-only file system"))
            .endsWith("may not be written."));
    assertTrue(
        words
            .apply(new FileSystemException("a", null, "the case is too large"))
            .contains("begin a new one"));
    assertTrue(
        words
            .apply(new FileSystemException("a", null, "File too large"))
            .endsWith("no file grow as large as the case."),
        "a limit of the system is not the limit of a case");
    assertTrue(words.apply(new AccessDeniedException("a")).endsWith("may not be written."));
    assertTrue(words.apply(new NoSuchFileException("a")).contains("a drive taken out?"));
    assertTrue(
        Trouble.of(new IOException("x"), folder.resolve("gone")).contains("a drive taken out?"));
    assertTrue(words.apply(new IOException("x")).contains("does not answer"));
  }

  @Test
  void aSmallDiskThatIsFullKeepsTheCaseAsItWas() throws IOException {
    Path small = Path.of("/dev/full");
    org.junit.jupiter.api.Assumptions.assumeTrue(
        Files.exists(small), "this system has no device that is always full");
    World.run("1\n1\n", "interview", "--home", folder.toString());
    String name = Cases.at(folder).store().names().get(0);
    String before = Files.readString(folder.resolve(name + ".json"));
    CaseStore store = new CaseStore(folder, new FullDisk(small));
    IOException full =
        org.junit.jupiter.api.Assertions.assertThrows(
            IOException.class, () -> store.putBeside(name, store.path(name), new byte[100]));
    assertTrue(Trouble.of(full, folder).endsWith("the disk is full."), full.getMessage());
    assertEquals(before, Files.readString(folder.resolve(name + ".json")));
    try (Stream<Path> files = Files.list(folder)) {
      assertEquals(
          List.of(), files.filter(f -> f.toString().endsWith(".tmp")).toList(), "nothing left");
    }
  }

  /** Writes go to a device of the system that is always full, so the fault is a real one. */
  private static final class FullDisk extends LocalDisk {
    private final Path full;

    FullDisk(Path full) {
      this.full = full;
    }

    @Override
    public void write(Path file, byte[] bytes) throws IOException {
      super.write(full, bytes);
    }
  }
}
