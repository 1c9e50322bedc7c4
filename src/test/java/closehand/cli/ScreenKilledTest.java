package closehand.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import closehand.bank.Bank;
import closehand.casefile.CaseLock;
import closehand.casefile.CaseStore;
import closehand.casefile.Holder;
import closehand.casefile.Passphrases;
import closehand.report.Glyphs;
import closehand.screen.frame.Key;
import java.io.BufferedReader;
import java.io.File;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The full screen is killed at moments nobody chose. It saves beside the face, and the keys come
 * faster than anybody types. {@code -Dclosehand.screenKills=100} kills it that often.
 */
class ScreenKilledTest {
  private static final int KILLS = Integer.getInteger("closehand.screenKills", 4);

  /** A new case in the clear, and its first answers. */
  private static final String KEYS = "13130" + "11111318" + "hand up\n" + "248";

  private static final int ANSWERS = 8;

  @TempDir private Path folder = Path.of(".");

  /** The full screen without a terminal: keys go in, and how much was answered comes out. */
  static final class Sitting {
    private Sitting() {}

    public static void main(String[] arguments) throws IOException {
      Path home = Path.of(arguments[0]);
      PrintStream out = new PrintStream(System.out, true, StandardCharsets.UTF_8);
      Surroundings surroundings =
          new Surroundings(
              InputStream.nullInputStream(),
              out,
              System.err,
              Map.of("XDG_CONFIG_HOME", home.resolve("config").toString()),
              Clock.systemUTC(),
              false,
              StandardCharsets.UTF_8);
      Bank bank = BankSource.load(Optional.empty()).bank().orElseThrow();
      Cases cases = Cases.at(home.resolve("cases"));
      try (ScreenSession session =
          new ScreenSession(surroundings, cases, Optional.empty(), () -> bank, Glyphs.UNICODE)) {
        for (char key : KEYS.toCharArray()) {
          press(session, key);
          out.println(given(session));
        }
        // Whoever kills it comes now at the latest.
        System.in.read();
      }
    }

    private static void press(ScreenSession session, char key) {
      session.face().press(key == '\n' ? Key.Named.ENTER : Key.of(key));
      if (session.face().busy()) {
        session.face().work();
      }
    }

    private static int given(ScreenSession session) {
      return session.face().interview().map(i -> i.answers().byFact().size()).orElse(0);
    }
  }

  @Test
  void atMostTheLastAnswerIsLostAndTheFileAlwaysOpens() throws Exception {
    Bank bank = BankSource.load(Optional.empty()).bank().orElseThrow();
    Random random = new Random(20261127L);
    for (int i = 0; i < KILLS; i++) {
      Path home = Files.createDirectories(folder.resolve("home" + i));
      int until = 2 + random.nextInt(ANSWERS - 1);
      check(bank, home, killed(home, until, random.nextInt(30_000_000)), "kill " + i);
    }
  }

  /** Kills the program some time after so many answers; how many were given by then. */
  private int killed(Path home, int until, long pauseNanos) throws Exception {
    Process sitting =
        new ProcessBuilder(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-XX:TieredStopAtLevel=1",
                "-XX:+UseSerialGC",
                "-Xmx200m",
                "-cp",
                classPath(),
                Sitting.class.getName(),
                home.toString())
            .directory(folder.toFile())
            .redirectError(folder.resolve("complained").toFile())
            .start();
    int given = 0;
    try (BufferedReader said = sitting.inputReader(StandardCharsets.UTF_8)) {
      while (given < until) {
        String line = said.readLine();
        assertTrue(line != null, Files.readString(folder.resolve("complained")));
        given = Integer.parseInt(String.valueOf(line));
      }
      long end = System.nanoTime() + pauseNanos;
      while (System.nanoTime() < end) {
        Thread.onSpinWait();
      }
      sitting.destroyForcibly().waitFor();
    }
    return given;
  }

  private static String classPath() {
    return Stream.of(System.getProperty("java.class.path").split(File.pathSeparator))
        .map(p -> Path.of(p).toAbsolutePath().toString())
        .collect(Collectors.joining(File.pathSeparator));
  }

  private void check(Bank bank, Path home, int given, String which) throws IOException {
    Path cases = home.resolve("cases");
    CaseStore store = Cases.at(cases).store();
    assertEquals(1, store.names().size(), which);
    String name = store.names().get(0);
    CaseLock.Taking taking = store.lock(name, new Holder("kit", 1, ""));
    assertInstanceOf(CaseLock.Taking.Taken.class, taking, which).lock().close();
    CaseStore.Opened opened = store.open(name, bank.questionnaire(), Passphrases.NONE);
    CaseStore.Opened.Case found = assertInstanceOf(CaseStore.Opened.Case.class, opened, which);
    int kept = found.file().saved().answers().byFact().size();
    assertTrue(kept >= given - 1, which + ": given " + given + ", kept " + kept);
    try (Stream<Path> files = Files.list(cases)) {
      assertFalse(files.anyMatch(f -> f.toString().endsWith(".tmp")), which + ": not swept");
    }
    assertEquals(List.of(), Files.readAllLines(folder.resolve("complained")), which);
  }
}
