package closehand.casefile;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** One writer at a time, whichever process it is and however it ends. */
class CaseLockTest {
  private static final Holder KIT = new Holder("kit", 7, "2026-11-25T10:00:00Z");
  private static final Holder SAM = new Holder("sam", 8, "2026-11-25T11:00:00Z");

  private final Path file;

  CaseLockTest(@TempDir Path temp) {
    this.file = temp.resolve("heron-oak.lock");
  }

  private static CaseLock taken(CaseLock.Taking taking) {
    return assertInstanceOf(CaseLock.Taking.Taken.class, taking).lock();
  }

  @Test
  void theSecondOneLearnsWhoTheFirstIsAndGetsItAfterwards() throws IOException {
    CaseLock lock = taken(CaseLock.take(file, KIT));
    assertEquals("rw-------", PosixFilePermissions.toString(Files.getPosixFilePermissions(file)));
    assertEquals(new CaseLock.Taking.Held(KIT), CaseLock.take(file, SAM));
    lock.close();
    lock.close();
    assertFalse(Files.exists(file));
    taken(CaseLock.take(file, SAM)).close();
  }

  @Test
  void aLockFileLeftBehindKeepsNobodyOut() throws IOException {
    Files.writeString(file, KIT.text());
    taken(CaseLock.take(file, SAM)).close();
    Files.writeString(file, "anything\u001b[2J at all");
    taken(CaseLock.take(file, SAM)).close();
  }

  @Test
  void whereNoLockFileCanBeMadeNobodyIsKeptOut() {
    Path nowhere = file.resolveSibling("nowhere").resolve("x.lock");
    assertInstanceOf(CaseLock.Taking.Unguarded.class, CaseLock.take(nowhere, KIT));
  }

  @Test
  void anotherProcessIsKeptOutUntilTheFirstIsKilled() throws Exception {
    Process first =
        new ProcessBuilder(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-cp",
                System.getProperty("java.class.path"),
                Sleeper.class.getName(),
                file.toString())
            .start();
    try (BufferedReader said =
        new BufferedReader(new InputStreamReader(first.getInputStream(), StandardCharsets.UTF_8))) {
      assertEquals("taken", said.readLine());
      Holder holder =
          assertInstanceOf(CaseLock.Taking.Held.class, CaseLock.take(file, SAM)).holder();
      assertEquals(new Holder("kit", first.pid(), "2026-11-25T10:00:00Z"), holder);
    } finally {
      first.destroyForcibly().waitFor();
    }
    assertTrue(Files.exists(file), "killed, so its file is still there");
    taken(CaseLock.take(file, SAM)).close();
  }

  /** Takes a lock, says so, and keeps it until it is killed. */
  static final class Sleeper {
    private Sleeper() {}

    public static void main(String[] arguments) throws IOException {
      Holder me = new Holder("kit", ProcessHandle.current().pid(), "2026-11-25T10:00:00Z");
      CaseLock.Taking taking = CaseLock.take(Path.of(arguments[0]), me);
      System.out.println(taking instanceof CaseLock.Taking.Taken ? "taken" : "not taken");
      System.in.read();
    }
  }

  @Test
  void whatIsNoHolderIsNobodyKnown() {
    assertEquals(SAM, Holder.read(SAM.text()));
    for (String text : new String[] {"", "a", "a\nb\nc\n", "a\n99999999999999999999\nc"}) {
      assertEquals(Holder.NOBODY_KNOWN, Holder.read(text), text);
    }
  }
}
