package closehand.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/** Drawn words on paper, by a printer that is a small script. */
@EnabledOnOs({OS.LINUX, OS.MAC})
class PrinterTest {
  @TempDir private Path folder = Path.of(".");

  private Map<String, String> withPrinter(String script) throws IOException {
    Path command = folder.resolve("lp");
    Files.writeString(command, "#!/bin/sh\n" + script + "\n");
    Files.setPosixFilePermissions(command, PosixFilePermissions.fromString("rwx------"));
    return Map.of("PATH", "/nowhere::" + folder, "COLUMNS", "72");
  }

  private String sealed(Map<String, String> environment, String typed) throws IOException {
    ByteArrayOutputStream output = new ByteArrayOutputStream();
    PrintStream printer = new PrintStream(output, true, StandardCharsets.UTF_8);
    int code =
        Closehand.run(
            new String[] {"interview", "--home", folder.resolve("cases").toString()},
            new Surroundings(
                new ByteArrayInputStream(typed.getBytes(StandardCharsets.UTF_8)),
                printer,
                printer,
                environment,
                Clock.fixed(Instant.parse("2026-11-25T10:00:00Z"), ZoneOffset.UTC),
                true,
                StandardCharsets.UTF_8,
                prompt -> Optional.empty()));
    assertEquals(ExitCode.DONE, code);
    return output.toString(StandardCharsets.UTF_8);
  }

  @Test
  void drawnWordsCanBePrintedAndAreWrittenIntoNoFile() throws IOException {
    Path paper = folder.resolve("paper");
    String said = sealed(withPrinter("cat > '" + paper + "'"), "\n\n1\np\n\n1\n:q\n");
    String words = said.split("The passphrase of this case:\n\n", -1)[1].split("\n", 2)[0];
    assertTrue(said.replace('\n', ' ').contains("type p to print them"), said);
    assertTrue(said.contains("Sent to the printer."), said);
    assertTrue(Files.readString(paper).contains("    " + words + "\n"), Files.readString(paper));
    assertTrue(Files.readString(paper).contains("Keep the two apart."));
    for (String name : Cases.at(folder.resolve("cases")).store().names()) {
      Path file = Cases.at(folder.resolve("cases")).store().sealedPath(name);
      assertFalse(Files.readString(file).contains(words.substring(0, 11)));
    }
  }

  @Test
  void aPrinterThatRefusesIsSaid() throws IOException {
    String said = sealed(withPrinter("cat > /dev/null; exit 1"), "\n\n1\np\n\n1\n:q\n");
    assertTrue(said.contains("They could not be printed."), said);
  }

  @Test
  void whereThereIsNoPrinterNoneIsOffered() throws IOException {
    String said = sealed(Map.of("PATH", "/nowhere", "COLUMNS", "72"), "\n\n1\n\n1\n:q\n");
    assertFalse(said.contains("type p"), said);
    assertTrue(Printer.in(Map.of()).isEmpty());
  }
}
