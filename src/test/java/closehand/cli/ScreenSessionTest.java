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
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
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
      if (session.face().busy()) {
        assertTrue(seen(session).contains("One moment"), seen(session));
        session.face().work();
      }
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
      type(session, "1313");
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
      type(session, "1");
      assertTrue(seen(session).contains("Welcome back"), seen(session));
    }
  }

  @Test
  void troubleWithTheDiskIsOnTheScreenBeforeTheNextKey() throws IOException {
    AtomicInteger woken = new AtomicInteger();
    try (ScreenSession session = session()) {
      session.book().whenTroubleChanges(woken::incrementAndGet);
      type(session, "13130");
      StoredCase stored = session.book().stored().orElseThrow();
      Path file = home.resolve("cases");
      stored.soon().finish();
      Files.move(file, home.resolve("elsewhere"));
      Files.writeString(file, "in the way");
      type(session, "1");
      stored.soon().finish();
      assertEquals(1, woken.get());
      assertFalse(seen(session).contains("Nothing can be saved"), seen(session));
      session.face().noted();
      assertTrue(seen(session).contains("Nothing can be saved"), seen(session));
      Files.delete(file);
      Files.move(home.resolve("elsewhere"), file);
      type(session, "1");
      stored.soon().finish();
      session.face().noted();
      assertFalse(seen(session).contains("saved"), seen(session));
    }
  }

  @Test
  void aCaseThatWasBrokenOffIsToldBeforeWhoAsks() throws IOException {
    String name;
    try (ScreenSession session = session()) {
      type(session, "131301");
      name = session.book().stored().orElseThrow().name();
    }
    Files.writeString(home.resolve("cases").resolve(name + ".lock"), "");
    try (ScreenSession session = session()) {
      session.face().beginning();
      assertTrue(seen(session).contains("1 case was left unfinished"), seen(session));
      assertTrue(seen(session).contains(name), seen(session));
      type(session, "0");
      assertTrue(seen(session).contains("Who asks the questions?"), seen(session));
    }
  }

  @Test
  void afterAnEmergencyOnlyItsTextStaysAndWhomToCall() throws IOException {
    try (ScreenSession session = session()) {
      type(session, "13130" + "11111318");
      type(session, "hand up\n");
      type(session, "2482" + "2");
      assertTrue(seen(session).contains("STOP. EMERGENCY HELP NOW"), seen(session));
      assertFalse(seen(session).contains("A clinician lowers it"), seen(session));
      assertTrue(seen(session).contains("\n Call the emergency number now.\n"), seen(session));
      type(session, "1");
      assertEquals(Optional.of(Effect.Ending.STOPPED), session.face().ending());
      assertEquals(ExitCode.DONE, session.finish());
    }
    assertTrue(printed().contains("STOP. EMERGENCY HELP NOW"), printed());
    assertFalse(printed().contains("closehand"), printed());
    assertTrue(
        printed().endsWith("Your answers are kept.\nCall the emergency number now.\n"), printed());
  }

  /** Whatever closes the window: what was half typed waits at its question. */
  @Test
  void whatIsHalfTypedIsKeptAndCanBeGoneOnWith() throws IOException {
    String name;
    try (ScreenSession session = session()) {
      type(session, "13130" + "11111318");
      type(session, "hand u");
      assertTrue(seen(session).contains("Words: hand u"), seen(session));
      session.face().press(new Key.Closed());
      assertEquals(ExitCode.DONE, session.finish());
      name = session.book().stored().orElseThrow().name();
    }
    Path file = home.resolve("cases").resolve(name + ".json");
    assertTrue(Files.readString(file).contains("\"session.stopSignal\" : \"hand u\""));
    World line =
        World.typed("1\n1\n:q\n", "interview", name, "--home", file.resolveSibling(".").toString());
    assertTrue(line.output().contains("Half typed before, and not given: hand u"), line.output());
    try (ScreenSession session = session()) {
      type(session, "211" + "1");
      assertTrue(
          seen(session).contains("2  Go on with what was half typed: hand u"), seen(session));
      type(session, "2");
      assertTrue(seen(session).contains("Words: hand u"), seen(session));
      type(session, "p\n");
      assertTrue(seen(session).contains("Noted"), seen(session));
      session.face().press(new Key.Closed());
      assertEquals(ExitCode.DONE, session.finish());
    }
    assertTrue(Files.readString(file).contains("hand up"));
    assertTrue(Files.readString(file).contains("\"halfTyped\" : { }"), "given by now");
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
  void aSealedCaseShowsItsWordsOnceAndOpensWithThemAlone() throws IOException {
    String words;
    try (ScreenSession session = session()) {
      type(session, "1311");
      assertTrue(seen(session).contains("The passphrase of this case:"), seen(session));
      words = wordsIn(seen(session));
      type(session, "021q1");
      assertEquals(ExitCode.DONE, session.finish());
    }
    assertFalse(printed().contains(words.substring(0, 11)), printed());
    try (ScreenSession session = session()) {
      type(session, "21wrong words\n");
      assertTrue(seen(session).contains("Wrong passphrase"), seen(session));
      assertFalse(seen(session).contains("wrong words"), seen(session));
      type(session, words);
      assertTrue(seen(session).contains("(typed, not shown)"), seen(session));
      assertFalse(seen(session).contains(words.substring(0, 5)), seen(session));
      type(session, "\n");
      assertTrue(seen(session).contains("left at question"), seen(session));
      type(session, "1");
      assertTrue(seen(session).contains("Welcome back"), seen(session));
    }
  }

  private static String wordsIn(String screen) {
    java.util.regex.Matcher six =
        java.util.regex.Pattern.compile("(?m)^ *([a-z]{5,7}( [a-z]{5,7}){5}) *$").matcher(screen);
    assertTrue(six.find(), screen);
    return six.group(1);
  }

  @Test
  void enterAloneGoesBackFromThePassphrase() throws IOException {
    try (ScreenSession session = session()) {
      type(session, "1311021q1");
    }
    try (ScreenSession session = session()) {
      type(session, "21");
      assertTrue(seen(session).contains("Enter alone goes back."), seen(session));
      type(session, "\n");
      assertTrue(seen(session).contains("Which case?"), seen(session));
    }
  }

  @Test
  void aPassphraseOfOnesOwnIsTypedTwiceAndOpensTheCase() throws IOException {
    try (ScreenSession session = session()) {
      type(session, "1312short\n");
      assertTrue(seen(session).contains("too short"), seen(session));
      type(session, "four words are enough\n");
      assertTrue(seen(session).contains("once more"), seen(session));
      type(session, "four words are enugh\n");
      assertTrue(seen(session).contains("not the same"), seen(session));
      type(session, "four words are enough\nfour words are enough\n");
      assertTrue(
          seen(session).replaceAll("\\s+", " ").contains("Everything is kept sealed"),
          seen(session));
      type(session, "01q1");
      assertEquals(ExitCode.DONE, session.finish());
    }
    try (ScreenSession session = session()) {
      type(session, "21four words are enough\n1");
      assertTrue(seen(session).contains("Welcome back"), seen(session));
    }
  }

  @Test
  void aCaseIsOnlyLookedAtSealedAfterAllAndDiscarded() throws IOException {
    String name;
    try (ScreenSession session = session()) {
      type(session, "131301q1");
      assertEquals(ExitCode.DONE, session.finish());
      name = session.book().stored().orElseThrow().name();
    }
    try (ScreenSession session = session()) {
      type(session, "212");
      assertTrue(seen(session).contains("IDEAS FOR YOUR GAME CONTROLS"), seen(session));
      type(session, "052four words are enough\nfour words are enough\n");
      assertTrue(
          seen(session).replaceAll("\\s+", " ").contains("sealed from now on"), seen(session));
      type(session, "0q1");
      assertEquals(ExitCode.DONE, session.finish());
    }
    assertTrue(home.resolve("cases").resolve(name + ".sealed").toFile().exists());
    assertFalse(home.resolve("cases").resolve(name + ".json").toFile().exists());
    try (ScreenSession session = session()) {
      type(session, "21four words are enough\n3");
      assertTrue(seen(session).contains("nothing brings it back"), seen(session));
      type(session, "1");
      assertTrue(home.resolve("cases").resolve(name + ".sealed").toFile().exists());
      type(session, "32");
      assertTrue(seen(session).contains("It is removed"), seen(session));
      type(session, "0");
      assertFalse(seen(session).contains("saved case"), seen(session));
    }
    assertFalse(home.resolve("cases").resolve(name + ".sealed").toFile().exists());
  }

  @Test
  void aReviewIsBegunFromTheScreen() throws IOException {
    try (ScreenSession session = session()) {
      type(session, "131301q1");
      assertEquals(ExitCode.DONE, session.finish());
    }
    try (ScreenSession session = session()) {
      type(session, "21");
      assertTrue(seen(session).contains("4  Review it"), seen(session));
      type(session, "4");
      assertTrue(
          seen(session).contains("We ask this again at every review")
              || seen(session).contains("Welcome back"),
          seen(session));
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
