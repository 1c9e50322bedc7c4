package closehand.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import closehand.screen.Command;
import closehand.screen.Settings;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The start of the line face: the same lines under the same numbers as on the full screen. */
class StartTest {
  @TempDir private Path folder = Path.of(".");

  private final ByteArrayOutputStream output = new ByteArrayOutputStream();

  private Surroundings typing(String lines) {
    PrintStream printer = new PrintStream(output, true, StandardCharsets.UTF_8);
    return new Surroundings(
        new ByteArrayInputStream(lines.getBytes(StandardCharsets.UTF_8)),
        printer,
        printer,
        Map.of("COLUMNS", "72", "XDG_CONFIG_HOME", folder.toAbsolutePath().toString()),
        Clock.systemUTC(),
        true,
        StandardCharsets.UTF_8);
  }

  private int start(String lines) throws IOException {
    InterviewCommand.Wanted wanted = new InterviewCommand.Wanted();
    wanted.line = true;
    wanted.home = Optional.of(folder.resolve("cases"));
    return new StartCommand(typing(lines), wanted).run();
  }

  private String said() {
    return output.toString(StandardCharsets.UTF_8).replaceAll("\\s+", " ");
  }

  @Test
  void aWrongNumberIsAskedAgain() throws IOException {
    assertEquals(ExitCode.DONE, start("7\n2\nq\n"));
    assertEquals(2, said().split("Please type one of these numbers", -1).length - 1, said());
    assertFalse(said().contains("saved case"), said());
  }

  @Test
  void anInventedPlayerIsTriedAndNothingIsSaidToBeKept() throws IOException {
    assumeTrue(
        StartTest.class.getResource("/examples/quiet-heron/answers.json") != null,
        "the example travels in the packed program");
    assertEquals(ExitCode.DONE, start("3\n1\n\n\n\nh\nq\n"));
    assertTrue(said().contains("This player is invented. Nothing you do here is kept."), said());
    assertTrue(said().endsWith("This player was invented. Nothing was kept. "), said());
    assertFalse(said().contains("keep everything"), said());
    assertFalse(Files.exists(folder.resolve("cases")), "nothing is left");
  }

  @Test
  void anInterviewGoesOnWithTheLinesThatWereTypedAhead() throws IOException {
    assertEquals(ExitCode.DONE, start("1\n3\n1\n3\n1\nq\n"));
    assertTrue(said().contains("Noted: Yes, I am happy to start."), said());
    output.reset();
    assertEquals(ExitCode.DONE, start("2\n9\n1\nq\n"));
    assertTrue(said().contains("2 go on with a saved case (1 case)"), said());
    assertTrue(said().contains("Please type one of these numbers or names"), said());
    assertTrue(said().contains("left at question 2"), said());
  }

  @Test
  void settingsOfTheFullScreenAreChangedAndHoldTheNextTime() throws IOException {
    assertEquals(ExitCode.DONE, start("5\n2\n5\n4\nb\nB\n4\n?\n4\nu\nW\n\nq\n"));
    Settings kept = SettingsFile.in(typing("")).read();
    assertTrue(kept.needsEnter(), said());
    assertEquals(1000, kept.holdMillis(), said());
    assertEquals('w', kept.letter(Command.UNDO), said());
    assertEquals('u', kept.letter(Command.WHO), "the two have changed places");
    assertTrue(said().contains("No command has that letter."), said());
  }
}
