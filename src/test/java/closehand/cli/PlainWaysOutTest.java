package closehand.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What stands after a stop, at a saved case and beside a file name, and what leads out. */
class PlainWaysOutTest {
  private static final String BEGIN = "1\n1\ny\ny\n1\n3\n1\n=hand up\n";
  private static final String SHARED = BEGIN + "2 4\nn\n";
  private static final String CLEAR = SHARED + "1\n1\n1\n1\n1\n1\n1\n1\n";

  @TempDir private Path folder = Path.of(".");

  private World interview(String typed, String... more) {
    String[] all = new String[3 + more.length];
    all[0] = "interview";
    all[1] = "--home";
    all[2] = folder.toString();
    System.arraycopy(more, 0, all, 3, more.length);
    return World.run(typed, all);
  }

  private static String flowing(World world) {
    return world.output().replace('\n', ' ');
  }

  private String name() throws IOException {
    return Cases.at(folder).store().names().get(0);
  }

  @Test
  void afterAnEmergencyNothingFollowsButThatItIsKeptAndWhomToCall() throws IOException {
    World world = interview(SHARED + "2\nc\nq\n");
    assertEquals(ExitCode.DONE, world.code(), world.output());
    String after = flowing(world).substring(flowing(world).indexOf("STOP. "));
    assertFalse(after.contains("A clinician can type c"), after);
    assertTrue(after.contains("That is none of these."), after);
    assertFalse(after.contains("closehand"), after);
    assertTrue(
        world.output().endsWith("Your answers are kept.\nCall the emergency number now.\n"),
        world.output());
    assertEquals(1, Cases.at(folder).store().names().size());
  }

  @Test
  void whomToCallIsTheLastLineBeforeTheEntry() {
    String output = interview(SHARED + "2\n").output();
    assertTrue(output.contains("\nCall the emergency number now.\n> "), output);
  }

  @Test
  void aLeavingWordEndsTheSessionThatHasNoConsent() {
    World world = interview("3\n:q\n");
    assertEquals(ExitCode.DONE, world.code());
    assertEquals(1, world.output().split("Nothing more is written down", -1).length - 1);
  }

  @Test
  void aStopThatMayBeLoweredIsOfferedToAClinician() {
    World world = interview(SHARED + "1\n1\n2\nc\n9\nq\n", "--asker", "clinician");
    assertTrue(flowing(world).contains("A clinician can type c."), world.output());
    assertTrue(flowing(world).contains("Nothing was lowered."), world.output());
  }

  @Test
  void theMenuOfASavedCaseIsNumberedWithoutAGap() throws IOException {
    interview("3\n");
    World world = World.typed("9\nq\n", "interview", name(), "--line", "--home", folder.toString());
    assertEquals(ExitCode.DONE, world.code());
    assertTrue(world.output().contains("  3  discard it"), world.output());
    assertTrue(world.output().contains("  4  seal it"), world.output());
    assertFalse(world.output().contains("  5  "), world.output());
    assertTrue(world.output().contains("Please type one of these numbers"), world.output());
  }

  @Test
  void theEndOfInputAtASavedCaseLeaves() throws IOException {
    interview(SHARED);
    World world = World.typed("", "interview", name(), "--line", "--home", folder.toString());
    assertEquals(ExitCode.DONE, world.code());
    assertFalse(world.output().contains("the page for the clinician"), world.output());
  }

  @Test
  void whyMoreIsAnsweredThanTheNumberWhereItWasLeftIsSaid() throws IOException {
    interview(CLEAR + ":j SAF-02\n");
    World world = World.typed("q\n", "interview", name(), "--line", "--home", folder.toString());
    assertTrue(
        flowing(world)
            .contains(
                "It was left at number 8, and questions after that one are answered already."),
        world.output());
    World plain =
        World.typed("1\n:j\n", "interview", name(), "--line", "--home", folder.toString());
    assertTrue(flowing(plain).contains("questions answered, "), plain.output());
  }

  @Test
  void howACaseIsKeptIsSaidTheSameWhoeverReadsIt() {
    String said = flowing(interview("1\n"));
    assertTrue(
        said.contains("readable by you, and by whoever can use this account or take the disk out."),
        said);
    assertFalse(said.contains("by you alone"), said);
  }

  @Test
  void whoWantedNothingKeptReadsHowItIsDeleted() throws IOException {
    World world = interview(BEGIN + "1\nn\n:q\n");
    assertTrue(
        flowing(world).contains("You asked to have this deleted after this session."),
        world.output());
    assertTrue(flowing(world).contains("closehand forget " + name()), world.output());
  }

  @Test
  void aPageStandsOnALineOfItsOwnWithoutAFullStop() throws IOException {
    String output = interview(SHARED + ":q\n").output();
    assertTrue(output.contains("\n" + folder.resolve(name() + "-player.txt") + "\n"), output);
  }

  @Test
  void aPathIsOnlyCutBeforeASlash() {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    PrintStream printer = new PrintStream(out, true, StandardCharsets.UTF_8);
    InputStream none = new ByteArrayInputStream(new byte[0]);
    Surroundings narrow =
        new Surroundings(
            none,
            printer,
            printer,
            Map.of("COLUMNS", "24"),
            Clock.systemUTC(),
            false,
            StandardCharsets.UTF_8,
            Secrets.NONE);
    new PlainConsole(narrow, none, closehand.report.Glyphs.ASCII, true)
        .path("/home/somebody/cases/quiet-heron-player.txt");
    assertEquals(
        "/home/somebody/cases\n/quiet-heron-player.txt\n", out.toString(StandardCharsets.UTF_8));
  }

  @Test
  void noLineOfTheOverviewEndsInTheMiddle() {
    String help = World.run("", "--help").output();
    assertTrue(help.replaceAll("\\s+", " ").contains("how far a thumb may reach."), help);
    assertFalse(help.contains(";\n"), help);
  }
}
