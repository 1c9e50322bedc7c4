package closehand.casefile;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import closehand.bank.Questionnaire;
import closehand.interview.Answer;
import closehand.interview.Answers;
import closehand.interview.CaseRecord;
import closehand.interview.Event;
import closehand.interview.Forms;
import closehand.interview.Interview;
import closehand.interview.Provenance;
import closehand.interview.SavedCase;
import closehand.interview.Value;
import closehand.json.CaseDocument;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.nio.file.attribute.PosixFilePermissions;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Cases on a real disk, with and without faults. */
class CaseStoreTest {
  private static final Questionnaire FORM =
      Forms.form(
          Forms.section(
              "A",
              Forms.question("A-1", Forms.words("goal.main")),
              Forms.question("A-2", Forms.whole("pain.now", 0, 10, "{score}"))));
  private static final Optional<SealKey> CLEAR = Optional.empty();
  private static final LocalDisk LOCAL = new LocalDisk();

  private final Path temp;

  CaseStoreTest(@TempDir Path temp) {
    this.temp = temp;
  }

  private Path folder() {
    return temp.resolve("deep").resolve("cases");
  }

  private CaseStore store() {
    return new CaseStore(folder(), LOCAL);
  }

  private static SavedCase with(String goal) {
    Answers answers =
        Answers.NONE.with(
            "goal.main",
            new Answers.Recorded(new Answer.Given(new Value.Text(goal)), Provenance.PLAYER_TOLD));
    return new SavedCase(
        "heron-oak",
        SavedCase.BankStamp.of(FORM, "abc"),
        Provenance.By.VOLUNTEER,
        Interview.Route.CORE,
        Optional.of("pain.now"),
        answers,
        Map.of("pain.now", "1"),
        "2026-11-24T10:00:00+01:00",
        "2026-11-24T10:05:00+01:00");
  }

  private static CaseDocument doc(String goal) {
    return CaseDocument.of(with(goal));
  }

  /** The previous content, opened as a file; beside the case itself it goes by another name. */
  private SavedCase previous() throws IOException {
    return opened(store().open(store().previous("heron-oak"), FORM, Passphrases.NONE))
        .named("heron-oak");
  }

  private static SavedCase opened(CaseStore.Opened opened) {
    return assertInstanceOf(CaseStore.Opened.Case.class, opened).file().saved();
  }

  private static String refusal(CaseStore.Opened opened) {
    return assertInstanceOf(CaseStore.Opened.Refused.class, opened).problems().get(0).code();
  }

  @Test
  void whatIsSavedComesBack() throws IOException {
    store().save(doc("race with friends"), FORM, CLEAR);
    assertEquals(
        with("race with friends"), opened(store().open("heron-oak", FORM, Passphrases.NONE)));
    store().save(doc("build a city"), FORM, CLEAR);
    assertEquals(with("build a city"), opened(store().open("heron-oak", FORM, Passphrases.NONE)));
    assertEquals(List.of("heron-oak.json", "heron-oak.previous"), sorted(folder()));
    Interview again = opened(store().open("heron-oak", FORM, Passphrases.NONE)).open(FORM);
    assertEquals(Optional.of("pain.now"), again.at());
  }

  @Test
  void filesAndFoldersAreTheOwnersAlone() throws IOException {
    store().save(doc("x"), FORM, CLEAR);
    assertEquals("rwx------", rights(folder()));
    assertEquals("rwx------", rights(temp.resolve("deep")));
    store().save(doc("y"), FORM, CLEAR);
    assertEquals("rw-------", rights(folder().resolve("heron-oak.json")));
    assertEquals("rw-------", rights(folder().resolve("heron-oak.previous")));
  }

  private static List<String> sorted(Path folder) throws IOException {
    List<String> names = new ArrayList<>(LOCAL.names(folder));
    names.sort(null);
    return names;
  }

  private static String rights(Path path) throws IOException {
    return PosixFilePermissions.toString(Files.getPosixFilePermissions(path));
  }

  @Test
  void theContentBeforeTheLastSaveIsKeptBesideIt() throws IOException {
    store().save(doc("first"), FORM, CLEAR);
    assertEquals(List.of("heron-oak.json"), sorted(folder()));
    store().save(doc("second"), FORM, CLEAR);
    store().save(doc("third"), FORM, CLEAR);
    assertEquals(with("second"), previous());
    new CaseStore(folder(), new WithoutLinks()).save(doc("fourth"), FORM, CLEAR);
    assertEquals(with("third"), previous());
    assertEquals("rw-------", rights(folder().resolve("heron-oak.previous")));
    assertEquals(List.of("heron-oak.json", "heron-oak.previous"), sorted(folder()));
  }

  /** A disk such as that of many sticks, on which a file has one name only. */
  private static final class WithoutLinks extends LocalDisk {
    @Override
    public void link(Path existing, Path other) throws IOException {
      throw new FileSystemException(other.toString());
    }
  }

  @Test
  void foldersOfOurOwnAreClosedToOthersAndLinksAreLeftAlone() throws IOException {
    Path own = Files.createDirectory(temp.resolve("own"));
    Files.setPosixFilePermissions(own, PosixFilePermissions.fromString("rwxrwxr-x"));
    CaseFolder.closeToOthers(own);
    assertEquals("rwx------", rights(own));
    CaseFolder.closeToOthers(temp.resolve("nowhere"));
    Path other = Files.createDirectory(temp.resolve("elsewhere"));
    Files.setPosixFilePermissions(other, PosixFilePermissions.fromString("rwxr-xr-x"));
    CaseFolder.closeToOthers(Files.createSymbolicLink(temp.resolve("link"), other));
    assertEquals("rwxr-xr-x", rights(other), "what a link leads to may be somebody else's");
  }

  @Test
  void aLockThatNobodyHoldsAnyMoreTellsOfACaseThatWasBrokenOff() throws IOException {
    store().save(doc("x"), FORM, CLEAR);
    store().save(doc("x").named("wren-elm"), FORM, CLEAR);
    assertEquals(List.of(), new CaseTraces(folder(), LOCAL).brokenOff());
    Files.writeString(folder().resolve("wren-elm.lock"), "");
    Files.writeString(folder().resolve("teal-yew.lock"), "");
    CaseLock.Taking mine = store().lock("heron-oak", new Holder("kit", 1, ""));
    assertEquals(List.of("wren-elm"), new CaseTraces(folder(), LOCAL).brokenOff());
    assertInstanceOf(CaseLock.Taking.Taken.class, mine).lock().close();
    Files.writeString(folder().resolve("heron-oak.lock"), "");
    Files.setLastModifiedTime(
        folder().resolve("wren-elm.json"), FileTime.from(Instant.parse("2026-11-24T10:00:00Z")));
    Files.setLastModifiedTime(
        folder().resolve("heron-oak.json"), FileTime.from(Instant.parse("2026-11-25T10:00:00Z")));
    assertEquals(List.of("heron-oak", "wren-elm"), new CaseTraces(folder(), LOCAL).brokenOff());
    sweepUnderTheLock();
    assertEquals(List.of("wren-elm"), new CaseTraces(folder(), LOCAL).brokenOff());
  }

  @ParameterizedTest
  @EnumSource(FaultyDisk.Fault.class)
  void whereverASaveBreaksOffTheCaseIsTheOldOneOrTheNewOne(FaultyDisk.Fault fault)
      throws IOException {
    int old = 0;
    int step = 0;
    Set<String> failed = new TreeSet<>();
    while (true) {
      store().save(doc("older"), FORM, CLEAR);
      store().save(doc("old"), FORM, CLEAR);
      FaultyDisk disk = new FaultyDisk(LOCAL, step, fault);
      boolean told = breaksOff(new CaseStore(folder(), disk));
      if (!disk.failed()) {
        break;
      }
      failed.add(disk.failedStep());
      SavedCase found = opened(store().open("heron-oak", FORM, Passphrases.NONE));
      assertTrue(found.equals(with("old")) || found.equals(with("new")), "step " + step);
      assertTrue(told || found.equals(with("new")), "step " + step + " failed unnoticed");
      old += found.equals(with("old")) ? 1 : 0;
      SavedCase before = previous();
      assertTrue(before.equals(with("older")) || before.equals(with("old")), "step " + step);
      sweepUnderTheLock();
      assertEquals(
          List.of("heron-oak.json", "heron-oak.previous"), sorted(folder()), "step " + step);
      step++;
    }
    assertTrue(step >= 10, "steps " + step);
    assertEquals(
        Set.of(
            "createFolder",
            "createTemporary",
            "write",
            "force",
            "link",
            "move",
            "delete",
            "forceFolder"),
        failed);
    assertTrue(old >= 4 && old < step, "old " + old);
    assertEquals(with("new"), opened(store().open("heron-oak", FORM, Passphrases.NONE)));
  }

  @Test
  void aFileThatCannotBeForcedIsNotTakenForSavedButAFolderMay() throws IOException {
    store().save(doc("old"), FORM, CLEAR);
    CaseStore unforced = new CaseStore(folder(), new Unforced(false));
    assertThrows(IOException.class, () -> unforced.save(doc("new"), FORM, CLEAR));
    assertEquals(with("old"), opened(store().open("heron-oak", FORM, Passphrases.NONE)));
    assertEquals(List.of("heron-oak.json"), sorted(folder()));

    CaseStore noFolders = new CaseStore(folder(), new Unforced(true));
    noFolders.save(doc("new"), FORM, CLEAR);
    assertEquals(with("new"), opened(store().open("heron-oak", FORM, Passphrases.NONE)));
    noFolders.delete("heron-oak");
    assertEquals(List.of(), sorted(folder()));
  }

  /** A disk that cannot be waited for: not for its files, or for its folders alone. */
  private static final class Unforced extends LocalDisk {
    private final boolean foldersAlone;

    Unforced(boolean foldersAlone) {
      this.foldersAlone = foldersAlone;
    }

    @Override
    public void force(Path file) throws IOException {
      if (!foldersAlone) {
        throw new FileSystemException(file.toString());
      }
      super.force(file);
    }

    @Override
    public void forceFolder(Path folder) throws IOException {
      throw new FileSystemException(folder.toString());
    }
  }

  private void sweepUnderTheLock() throws IOException {
    CaseLock.Taking taking = store().lock("heron-oak", new Holder("kit", 1, ""));
    assertInstanceOf(CaseLock.Taking.Taken.class, taking).lock().close();
  }

  private static boolean breaksOff(CaseStore store) {
    try {
      store.save(doc("new"), FORM, CLEAR);
      return false;
    } catch (IOException | FaultyDisk.Killed e) {
      return true;
    }
  }

  @Test
  void anErrorLeavesNoTemporaryFileBehind() throws IOException {
    store().save(doc("older"), FORM, CLEAR);
    store().save(doc("old"), FORM, CLEAR);
    for (int step = 2; step < 11; step++) {
      CaseStore store =
          new CaseStore(folder(), new FaultyDisk(LOCAL, step, FaultyDisk.Fault.ERROR));
      breaksOff(store);
      assertEquals(
          List.of("heron-oak.json", "heron-oak.previous"), sorted(folder()), "step " + step);
    }
  }

  @Test
  void whatAnotherCaseLeftBehindIsNotSwept() throws IOException {
    store().save(doc("x"), FORM, CLEAR);
    Files.writeString(folder().resolve(".save-heron-oak.1.tmp"), "{");
    Files.writeString(folder().resolve(".save-heron-oak-2.1.tmp"), "{");
    sweepUnderTheLock();
    assertEquals(List.of(".save-heron-oak-2.1.tmp", "heron-oak.json"), sorted(folder()));
  }

  @Test
  void whatNeverWasACaseIsRefusedWithAReason() throws IOException {
    store().save(doc("x"), FORM, CLEAR);
    String text = Files.readString(store().path("heron-oak"));
    assertEquals("no-such-case", refusal(store().open("wren-elm", FORM, Passphrases.NONE)));
    assertEquals("wrong-name", refusal(store().open("../heron-oak", FORM, Passphrases.NONE)));
    assertEquals("wrong-format", refusal(open("{}")));
    assertEquals("wrong-format", refusal(open(text.replace("closehand-case", "other"))));
    assertEquals(
        "newer-version",
        refusal(open(text.replaceFirst("\"schema\" : [0-9]+", "\"schema\" : 99"))));
    assertEquals("not-json", refusal(open("")));
    assertEquals("not-json", refusal(open(text.substring(0, text.length() / 2))));
    assertEquals("not-json", refusal(open(text + "{}")));
    assertEquals("wrong-type", refusal(open("[]")));
    assertEquals("duplicate-key", refusal(open(text.replace("\"route\"", "\"asker\""))));
    assertEquals("too-large", refusal(open(" ".repeat(2_000_001))));
    assertEquals("too-large", refusal(open("{\"a\":".repeat(50) + "1" + "}".repeat(50))));
    assertEquals("not-utf8", refusal(openBytes(new byte[] {(byte) 0xff, '{', '}'})));
    assertEquals("unclean-text", refusal(open(text.replace("\"x\"", "\"x\\u001b[2J\""))));
  }

  @Test
  void everyTruncationIsRefused() throws IOException {
    store().save(doc("x"), FORM, CLEAR);
    byte[] whole = Files.readAllBytes(store().path("heron-oak"));
    String text = new String(whole, StandardCharsets.UTF_8);
    int end = text.lastIndexOf('}');
    for (int length = 0; length <= end; length++) {
      CaseStore.Opened opened = open(text.substring(0, length));
      assertInstanceOf(CaseStore.Opened.Refused.class, opened, "length " + length);
    }
  }

  private CaseStore.Opened open(String text) throws IOException {
    return openBytes(text.getBytes(StandardCharsets.UTF_8));
  }

  private CaseStore.Opened openBytes(byte[] bytes) throws IOException {
    return store().open(Files.write(temp.resolve("other.json"), bytes), FORM, Passphrases.NONE);
  }

  @Test
  void messagesNeverQuoteAnswers() throws IOException {
    store().save(doc("secretive"), FORM, CLEAR);
    String text = Files.readString(store().path("heron-oak"));
    for (int length = 0; length < text.length(); length += 7) {
      CaseStore.Opened opened = open(text.substring(0, length));
      assertTrue(!opened.toString().contains("secretive"), "length " + length);
    }
  }

  @Test
  void deletingLeavesNothing() throws IOException {
    store().save(doc("x"), FORM, CLEAR);
    store().save(doc("y"), FORM, CLEAR);
    store().keepAsItWas("heron-oak", store().path("heron-oak"));
    Files.writeString(folder().resolve(".save-heron-oak.123.tmp"), "{");
    store().delete("heron-oak");
    assertEquals(List.of(), LOCAL.names(folder()));
    store().delete("heron-oak");
  }

  private static final char[] WORDS = "kelar modon tibel sawim rohok nelon".toCharArray();

  private SavedCase unsealed(Path file) throws IOException {
    return opened(store().open(file, FORM, attempt -> Optional.of(WORDS.clone())));
  }

  @Test
  void aSealedCaseIsSealedInEveryFileAndOpensWithItsPassphraseAlone() throws IOException {
    Optional<SealKey> key = Optional.of(SealKey.make(WORDS));
    store().save(doc("secretive"), FORM, key);
    store().save(doc("secretive too"), FORM, key);
    store().keepAsItWas("heron-oak", store().where("heron-oak"));
    assertEquals(
        List.of("heron-oak.before", "heron-oak.previous", "heron-oak.sealed"), sorted(folder()));
    for (String file : sorted(folder())) {
      String text = Files.readString(folder().resolve(file), StandardCharsets.ISO_8859_1);
      assertTrue(text.startsWith("-----BEGIN PGP MESSAGE-----"), file);
      assertFalse(text.contains("secretive") || text.contains("heron"), file);
      assertEquals("rw-------", rights(folder().resolve(file)));
    }
    assertEquals(List.of("heron-oak"), store().names());
    assertEquals(with("secretive too"), unsealed(store().where("heron-oak")));
    assertEquals(with("secretive"), unsealed(store().previous("heron-oak")).named("heron-oak"));
    assertEquals("sealed", refusal(store().open("heron-oak", FORM, Passphrases.NONE)));
    List<Integer> attempts = new ArrayList<>();
    Passphrases wrong =
        attempt -> {
          attempts.add(attempt);
          return Optional.of("some other words".toCharArray());
        };
    assertEquals("sealed", refusal(store().open("heron-oak", FORM, wrong)));
    assertEquals(List.of(1, 2, 3), attempts);
    store().delete("heron-oak");
    assertEquals(List.of(), sorted(folder()));
  }

  @ParameterizedTest
  @EnumSource(FaultyDisk.Fault.class)
  void whereverASealedSaveBreaksOffNothingClearIsLeft(FaultyDisk.Fault fault) throws IOException {
    Optional<SealKey> key = Optional.of(SealKey.make(WORDS));
    store().save(doc("old"), FORM, key);
    FaultyDisk disk;
    int step = 0;
    do {
      disk = new FaultyDisk(LOCAL, step, fault);
      try {
        new CaseStore(folder(), disk).save(doc("new"), FORM, key);
      } catch (IOException | FaultyDisk.Killed e) {
        assertTrue(disk.failed());
      }
      for (String file : sorted(folder())) {
        String text = Files.readString(folder().resolve(file));
        assertTrue(
            text.isEmpty() || text.startsWith("-----BEGIN PGP"), "step " + step + " " + file);
      }
      step++;
    } while (disk.failed());
    assertEquals(with("new"), unsealed(store().where("heron-oak")));
  }

  @Test
  void aCaseThatCouldNotBeOpenedAgainIsNotSavedOverTheOneBefore() throws IOException {
    store().save(doc("x"), FORM, CLEAR);
    Event event =
        new Event(
            "2026-11-25T10:00:00Z",
            1,
            Event.What.NOTED,
            "goal.main",
            Optional.empty(),
            Optional.empty(),
            "player",
            "w".repeat(1000));
    CaseDocument large =
        doc("y").with(with("y"), CaseRecord.NONE.with(Collections.nCopies(2000, event)));
    assertThrows(IOException.class, () -> store().save(large, FORM, CLEAR));
    assertEquals(with("x"), opened(store().open("heron-oak", FORM, Passphrases.NONE)));
  }

  @Test
  void namesAreListedAndFreshOnesFound() throws IOException {
    assertEquals(List.of(), store().names());
    assertEquals("avocet-acacia", store().freshName(0));
    store().save(doc("x"), FORM, CLEAR);
    Files.writeString(folder().resolve("Not A Case.json"), "{}");
    assertEquals(List.of("heron-oak"), store().names());
    Files.writeString(folder().resolve("avocet-acacia.json"), "{}");
    assertEquals(CaseName.of(1), store().freshName(0));
  }

  @Test
  void aCopiedOrForeignCaseNeverReplacesAnother() throws IOException {
    store().save(doc("mine"), FORM, CLEAR);
    Path mine = store().path("heron-oak");
    Files.copy(mine, folder().resolve("wren-elm.json"));
    CaseFile copied = file(store().open("wren-elm", FORM, Passphrases.NONE));
    assertEquals("wren-elm", copied.saved().name());
    assertEquals("other-name", copied.warnings().get(0).code());

    Path foreign = Files.copy(mine, temp.resolve("heron-oak.json"));
    assertEquals("heron-oak-2", file(store().open(foreign, FORM, Passphrases.NONE)).saved().name());
    Files.writeString(foreign, Files.readString(mine).replace("heron-oak", "../../x"));
    assertTrue(
        CaseName.isLawful(file(store().open(foreign, FORM, Passphrases.NONE)).saved().name()));
    store().delete("heron-oak");
    Files.writeString(foreign, Files.readString(folder().resolve("wren-elm.json")));
    assertEquals("heron-oak", file(store().open(foreign, FORM, Passphrases.NONE)).saved().name());
  }

  @Test
  void aFolderALinkOrAPipeIsNoCase() throws IOException {
    store().save(doc("x"), FORM, CLEAR);
    Path link = folder().resolve("wren-elm.json");
    Files.createSymbolicLink(link, store().path("heron-oak"));
    assertEquals("not-a-file", refusal(store().open("wren-elm", FORM, Passphrases.NONE)));
    Files.createDirectory(folder().resolve("teal-yew.json"));
    assertEquals("not-a-file", refusal(store().open("teal-yew", FORM, Passphrases.NONE)));
    store().save(doc("y").named("wren-elm"), FORM, CLEAR);
    assertEquals(with("x"), opened(store().open("heron-oak", FORM, Passphrases.NONE)));
  }

  private static CaseFile file(CaseStore.Opened opened) {
    return assertInstanceOf(CaseStore.Opened.Case.class, opened).file();
  }

  @Test
  void aPathNeverLeadsOutOfTheFolder() {
    for (String name :
        List.of("", "-a", "a/b", "..", "a.b", "A", "a b", "x".repeat(65), "nul", "com1")) {
      assertThrows(IllegalArgumentException.class, () -> store().path(name), name);
    }
    assertEquals(folder().resolve("a-1.json"), store().path("a-1"));
  }
}
