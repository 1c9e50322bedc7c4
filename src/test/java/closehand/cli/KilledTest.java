package closehand.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import closehand.bank.Bank;
import closehand.casefile.CaseLock;
import closehand.casefile.CaseStore;
import closehand.casefile.Holder;
import closehand.json.BankReader;
import closehand.json.EmbeddedBank;
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
 * The program is killed at moments nobody chose. {@code -Dclosehand.kills=200} kills it that often;
 * a few times do for every build. Killing shows what a dying process leaves behind; what a power
 * cut leaves rests on the disk keeping what it was told to write.
 */
class KilledTest {
  private static final int KILLS = Integer.getInteger("closehand.kills", 6);
  private static final String OWN = "four words are enough here";

  /** Who asks, how long, a passphrase of one's own; then one answer a line. */
  private static final String SEALED = "\n\n2\n";

  private static final String CLEAR = "\n\n3\n";

  private static final String ANSWERS =
      "1\n1\ny\ny\n1\n3\n1\n=wave the flamingo\n2\nn\n1\n1\n1\n1\n1\n1\n1\n1\n1\n1\n1\n";

  @TempDir private Path folder = Path.of(".");

  /** The program at a terminal of its own, so to say: it is asked everything a person is asked. */
  static final class Window {
    private Window() {}

    public static void main(String[] arguments) {
      System.exit(
          Closehand.run(
              arguments,
              new Surroundings(
                  System.in,
                  new PrintStream(System.out, false, StandardCharsets.UTF_8),
                  System.err,
                  Map.of("COLUMNS", "72"),
                  Clock.systemUTC(),
                  true,
                  StandardCharsets.UTF_8,
                  prompt -> Optional.of(OWN.toCharArray()))));
    }
  }

  @Test
  void atMostTheAnswerBeingTypedIsLostAndTheFileAlwaysOpens() throws Exception {
    Bank bank = BankReader.read(new EmbeddedBank(), BankReader.Extent.FOR_USE).bank().orElseThrow();
    Random random = new Random(20261125L);
    for (int i = 0; i < KILLS; i++) {
      Path home = folder.resolve("cases" + i);
      boolean sealed = i % 2 == 0;
      int asked = killed(home, (sealed ? SEALED : CLEAR) + ANSWERS, random);
      check(bank, home, sealed, asked, "kill " + i);
    }
  }

  /** Kills the program some time after a question was put; how many questions were put by then. */
  private int killed(Path home, String script, Random random) throws Exception {
    Path temporary = Files.createDirectories(folder.resolve("tmp"));
    Process window =
        new ProcessBuilder(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-XX:TieredStopAtLevel=1",
                "-XX:+UseSerialGC",
                "-Xmx200m",
                "-Djava.io.tmpdir=" + temporary,
                "-cp",
                classPath(),
                Window.class.getName(),
                "interview",
                "--home",
                home.toString())
            .directory(folder.toFile())
            .redirectError(folder.resolve("complained").toFile())
            .start();
    window.getOutputStream().write(script.getBytes(StandardCharsets.UTF_8));
    window.getOutputStream().close();
    int until = 1 + random.nextInt(20);
    long pause = random.nextInt(30_000_000);
    int asked = 0;
    InputStream said = window.getInputStream();
    boolean lineBegins = true;
    for (int c = said.read(); c >= 0 && asked < until; c = asked < until ? said.read() : c) {
      asked += lineBegins && c == '>' ? 1 : 0;
      lineBegins = c == '\n';
    }
    long end = System.nanoTime() + pause;
    while (System.nanoTime() < end) {
      Thread.onSpinWait();
    }
    window.destroyForcibly().waitFor();
    return asked;
  }

  private static String classPath() {
    return Stream.of(System.getProperty("java.class.path").split(File.pathSeparator))
        .map(p -> Path.of(p).toAbsolutePath().toString())
        .collect(Collectors.joining(File.pathSeparator));
  }

  private void check(Bank bank, Path home, boolean sealed, int asked, String which)
      throws IOException {
    CaseStore store = Cases.at(home).store();
    List<String> names = store.names();
    assertEquals(asked > 1 ? 1 : names.size(), names.size(), which);
    if (!names.isEmpty()) {
      String name = names.get(0);
      CaseLock.Taking taking = store.lock(name, new Holder("kit", 1, ""));
      assertInstanceOf(CaseLock.Taking.Taken.class, taking, which).lock().close();
      CaseStore.Opened opened =
          store.open(name, bank.questionnaire(), attempt -> Optional.of(OWN.toCharArray()));
      CaseStore.Opened.Case found = assertInstanceOf(CaseStore.Opened.Case.class, opened, which);
      int kept = found.file().saved().answers().byFact().size();
      assertTrue(kept >= asked - 1, which + ": asked " + asked + ", kept " + kept);
      assertEquals(kept, found.file().document().record().history().size() - 1, which);
      assertEquals(sealed, found.file().key().isPresent(), which);
      try (Stream<Path> files = Files.list(home)) {
        assertFalse(files.anyMatch(f -> f.toString().endsWith(".tmp")), which + ": not swept");
      }
    }
    if (sealed) {
      assertEquals(List.of(), filesWith("flamingo", home), which);
    }
    assertEquals(List.of(), filesWith("flamingo", folder.resolve("tmp")), which);
    assertEquals("", Files.readString(folder.resolve("complained")), which);
  }

  private static List<Path> filesWith(String word, Path folder) throws IOException {
    if (!Files.exists(folder)) {
      return List.of();
    }
    try (Stream<Path> files = Files.walk(folder)) {
      return files.filter(Files::isRegularFile).filter(f -> contains(f, word)).toList();
    }
  }

  private static boolean contains(Path file, String word) {
    try {
      return Files.readString(file, StandardCharsets.ISO_8859_1).contains(word);
    } catch (IOException e) {
      return false;
    }
  }
}
