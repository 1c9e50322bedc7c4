package closehand.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import closehand.bank.Bank;
import closehand.casefile.CaseStore;
import closehand.casefile.Passphrases;
import closehand.json.BankReader;
import closehand.json.EmbeddedBank;
import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/**
 * A disk of a few kilobytes that really is full, in memory and seen by the program alone. Where a
 * machine lets nobody make one, this is skipped.
 */
@EnabledOnOs(OS.LINUX)
class SmallDiskTest {
  private static final int NOT_HERE = 77;
  private static final String KILOBYTES = "44";

  /** Makes the disk at the first folder, runs the program, and copies what is there in the end. */
  private static final String SCRIPT =
      "mount -t tmpfs -o size="
          + KILOBYTES
          + "k small \"$0\" || exit "
          + NOT_HERE
          + "; left=$1; shift; \"$@\"; code=$?; cp -r \"$0\" \"$left\"; exit $code";

  private static final String ANSWERS =
      "\n\n3\n1\n1\ny\ny\n1\n3\n1\n=hand up\n2\nn\n1\n1\n1\n1\n1\n1\n1\n1\n1\n1\n1\n1\n1\n1\n";

  @TempDir private Path folder = Path.of(".");

  @Test
  void theInterviewGoesOnSaysSoAndTheCaseStillOpens() throws Exception {
    Path home = Files.createDirectory(folder.resolve("small"));
    Path left = folder.resolve("left");
    Path said = folder.resolve("said");
    int code = run(home, left, said);
    assumeTrue(code != NOT_HERE && code != 1 && code != 127, "no small disk can be made here");
    String output = Files.readString(said).replaceAll("\\s+", " ");
    assertEquals(ExitCode.INPUT_OUTPUT, code, output);
    assertTrue(output.contains("the disk is full."), output);
    assertTrue(output.contains("The interview goes on"), output);
    assertTrue(output.contains("not saved. What now?"), output);
    CaseStore store = Cases.at(left).store();
    Bank bank = BankReader.read(new EmbeddedBank(), BankReader.Extent.FOR_USE).bank().orElseThrow();
    CaseStore.Opened opened =
        store.open(store.names().get(0), bank.questionnaire(), Passphrases.NONE);
    CaseStore.Opened.Case found = assertInstanceOf(CaseStore.Opened.Case.class, opened);
    int kept = found.file().saved().answers().byFact().size();
    assertTrue(kept > 2 && kept < 25, "saved until it was full: " + kept);
    assertEquals(kept, found.file().document().record().history().size() - 1);
    try (Stream<Path> files = Files.list(left)) {
      assertFalse(files.anyMatch(f -> f.toString().endsWith(".tmp")), "nothing half written");
    }
  }

  private int run(Path home, Path left, Path said) throws IOException, InterruptedException {
    String classPath =
        Stream.of(System.getProperty("java.class.path").split(File.pathSeparator))
            .map(p -> Path.of(p).toAbsolutePath().toString())
            .collect(Collectors.joining(File.pathSeparator));
    Process window;
    try {
      window =
          new ProcessBuilder(
                  "unshare",
                  "-rm",
                  "sh",
                  "-c",
                  SCRIPT,
                  home.toString(),
                  left.toString(),
                  Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                  "-XX:TieredStopAtLevel=1",
                  "-Xmx200m",
                  "-Djava.io.tmpdir=" + folder,
                  "-cp",
                  classPath,
                  KilledTest.Window.class.getName(),
                  "interview",
                  "--home",
                  home.toString())
              .redirectOutput(said.toFile())
              .redirectError(folder.resolve("complained").toFile())
              .start();
    } catch (IOException e) {
      return NOT_HERE;
    }
    try (var typing = window.getOutputStream()) {
      typing.write(ANSWERS.getBytes(StandardCharsets.UTF_8));
    } catch (IOException e) {
      // It was over before it had read everything.
    }
    return window.waitFor();
  }
}
