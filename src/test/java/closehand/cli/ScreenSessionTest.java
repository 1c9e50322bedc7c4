package closehand.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import closehand.bank.Bank;
import closehand.report.Glyphs;
import closehand.screen.Effect;
import closehand.screen.frame.Key;
import closehand.screen.frame.ScreenSize;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Sittings at the full screen, from the start to what stands on the terminal afterwards. */
class ScreenSessionTest {
  @TempDir private Path home = Path.of(".");

  private final ByteArrayOutputStream output = new ByteArrayOutputStream();

  private ScreenSession session() throws IOException {
    PrintStream printer = new PrintStream(output, true, StandardCharsets.UTF_8);
    Surroundings surroundings =
        new Surroundings(
            InputStream.nullInputStream(),
            printer,
            printer,
            Map.of("XDG_CONFIG_HOME", home.resolve("config").toString()),
            Clock.fixed(Instant.parse("2026-11-25T09:00:00Z"), ZoneOffset.UTC),
            false,
            StandardCharsets.UTF_8);
    Bank bank = BankSource.load(Optional.empty()).bank().orElseThrow();
    return new ScreenSession(
        surroundings,
        Cases.at(home.resolve("cases")),
        Optional.empty(),
        () -> bank,
        Glyphs.UNICODE);
  }

  private static void type(ScreenSession session, String keys) {
    for (char key : keys.toCharArray()) {
      session.face().press(key == '\n' ? Key.Named.ENTER : Key.of(key));
    }
  }

  private static String seen(ScreenSession session) {
    return String.join("\n", session.face().frame(ScreenSize.USUAL).text());
  }

  private String printed() {
    return output.toString(StandardCharsets.UTF_8);
  }

  @Test
  void aCaseIsBegunLeftAndGoneOnWith() throws IOException {
    String name;
    try (ScreenSession session = session()) {
      type(session, "1312");
      assertTrue(seen(session).contains("This case is called"), seen(session));
      type(session, "0");
      assertTrue(seen(session).contains("Are you happy to start?"), seen(session));
      type(session, "1");
      assertTrue(seen(session).contains("Noted"), seen(session));
      type(session, "q1");
      assertEquals(Optional.of(Effect.Ending.LEFT), session.face().ending());
      assertEquals(ExitCode.DONE, session.finish());
      name = session.book().stored().orElseThrow().name();
    }
    assertTrue(printed().contains("IDEAS FOR YOUR GAME CONTROLS"), printed());
    assertTrue(printed().contains("closehand interview " + name), printed());
    assertTrue(home.resolve("cases").resolve(name + "-player.txt").toFile().exists());

    try (ScreenSession session = session()) {
      type(session, "21");
      assertTrue(seen(session).contains("left at question"), seen(session));
      type(session, "0");
      assertTrue(seen(session).contains("Welcome back"), seen(session));
    }
  }

  @Test
  void theExampleLeavesNothingBehind() throws IOException {
    assumeTrue(
        ScreenSession.class.getResource("/examples/quiet-heron/answers.json") != null,
        "the example travels in the packed program");
    try (ScreenSession session = session()) {
      type(session, "3");
      assertTrue(seen(session).contains("This player is invented"), seen(session));
      type(session, "01");
      type(session, "s");
      assertTrue(seen(session).contains("What the answers so far point to"), seen(session));
      type(session, "0q1");
      assertEquals(ExitCode.DONE, session.finish());
    }
    assertFalse(home.resolve("cases").toFile().exists());
  }

  @Test
  void aSealedCaseShowsItsWordsAndOpensInNoOtherWayFromTheScreen() throws IOException {
    try (ScreenSession session = session()) {
      type(session, "1311");
      assertTrue(seen(session).contains("The passphrase of this case:"), seen(session));
      type(session, "021q1");
      assertEquals(ExitCode.DONE, session.finish());
    }
    try (ScreenSession session = session()) {
      type(session, "21");
      String said = seen(session).replaceAll("\\s+", " ");
      assertTrue(said.contains("opened with: closehand interview"), said);
      assertEquals(Optional.empty(), session.face().interview());
    }
  }

  @Test
  void theBankIsCheckedOnTheScreen() throws IOException {
    try (ScreenSession session = session()) {
      type(session, "4");
      assertTrue(seen(session).contains("The bank is sound"), seen(session));
    }
  }

  @Test
  void settingsHoldTheNextTime() throws IOException {
    try (ScreenSession session = session()) {
      type(session, "52");
    }
    try (ScreenSession session = session()) {
      assertTrue(session.face().settings().needsEnter());
      type(session, "5");
      assertTrue(seen(session).contains("> 5  Settings"), seen(session));
      type(session, "\n");
      assertTrue(seen(session).contains("Enter takes the answer: on"), seen(session));
      assertEquals(List.of(), session.face().lastWords());
    }
  }
}
