package closehand.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Commands, exit codes and what is said about mistakes. */
class CommandsTest {
  private static final String HERON = "examples/quiet-heron/answers.json";

  @TempDir private Path folder = Path.of(".");

  @Test
  void anUnknownOptionIsAUsageMistakeWithAHint() {
    World world = World.run("", "advise", "--anwsers", HERON);
    assertEquals(ExitCode.USAGE, world.code());
    assertTrue(world.error().contains("--answers"), world.error());
    assertEquals("", world.output());
  }

  @Test
  void aCaseAndAFileTogetherAreOneTooMany() {
    assertEquals(ExitCode.USAGE, World.run("", "advise", "some-case", "--answers", HERON).code());
    assertEquals(ExitCode.USAGE, World.run("", "summary").code());
  }

  @Test
  void howItLooksCanBeSaidWithoutTheWordInterview() {
    String[] all = {
      "--home",
      folder.toString(),
      "--theme",
      "mono",
      "--no-color",
      "--ascii",
      "--line",
      "--transcript",
      folder.resolve("follow.txt").toString()
    };
    World world = World.typed("q\n", all);
    assertEquals(ExitCode.DONE, world.code(), world.error());
    assertTrue(world.output().contains("because --line was given"), world.output());
  }

  @Test
  void whatIsSaidBeforeInterviewCountsForIt() throws IOException {
    World world = World.run("1\n:q\n", "--home", folder.toString(), "interview", "--script", "-");
    assertEquals(ExitCode.DONE, world.code(), world.error());
    assertEquals(1, Cases.at(folder).store().names().size());
  }

  @Test
  void whatIsSaidBeforeAnotherCommandIsNotPassedOverInSilence() {
    World world = World.run("", "--ascii", "advise", "--answers", HERON);
    assertEquals(ExitCode.USAGE, world.code());
    assertTrue(world.error().contains("Options of advise come after its name"), world.error());
  }

  @Test
  void aMissingFileIsNoInput() {
    World world = World.run("", "advise", "--answers", "nowhere.json");
    assertEquals(ExitCode.NO_INPUT, world.code());
    assertEquals("There is no file \"nowhere.json\".\n", world.error());
  }

  @Test
  void aFolderInPlaceOfAFileIsCalledOne() {
    World world = World.run("", "advise", "--answers", folder.toString());
    assertEquals(ExitCode.NO_INPUT, world.code());
    assertEquals("\"" + folder + "\" is a folder; a file is wanted here.\n", world.error());
  }

  @Test
  void aSavedCaseIsNoFileOfAnswers() throws IOException {
    Path file =
        Files.writeString(folder.resolve("a.json"), "{\"format\": \"closehand-case\", \"x\": 1}");
    World world = World.run("", "advise", "--answers", file.toString());
    assertEquals(ExitCode.BAD_DATA, world.code());
    assertTrue(world.error().contains("a saved case, not a file of answers"), world.error());
    assertFalse(world.error().contains("no question"), world.error());
  }

  @Test
  void aControlCharacterInAFileIsCalledOne() throws IOException {
    Path file = Files.writeString(folder.resolve("a.json"), "{\"pain.now\": \"\u001b[2J\"}");
    World world = World.run("", "advise", "--answers", file.toString());
    assertEquals(ExitCode.BAD_DATA, world.code());
    assertTrue(world.error().contains("control character"), world.error());
    assertFalse(world.error().contains("\u001b"), "nothing of it reaches the terminal");
  }

  @Test
  void aGameThatTakesNothingOfAnIdeaIsNamedBesideIt() {
    String otter = "examples/amber-otter/answers.json";
    String advice = World.run("", "advise", "--answers", otter).output();
    List<String> refused =
        Stream.of(advice.split("\n(?= *[0-9]+\\. )"))
            .filter(idea -> idea.contains("Racing (races with my cousins) does not take this"))
            .map(idea -> idea.replaceAll("(?s).*?\\[([A-Z_]+)\\].*", "$1"))
            .toList();
    assertEquals(List.of("ONSCREEN", "VOICE", "SOUND", "MOUSE_PLAIN", "MOUSE_SIDE_R"), refused);
  }

  @Test
  void aWrongAnswerIsNamedByPlaceAndNeverQuoted() throws IOException {
    Path file =
        Files.writeString(
            folder.resolve("a.json"),
            "{\n  \"pain.now\": 1234567,\n  \"safe.chst\": \"secret\"\n}\n");
    World world = World.run("", "advise", "--answers", file.toString());
    assertEquals(ExitCode.BAD_DATA, world.code());
    assertTrue(world.error().contains("a.json:2:"), world.error());
    assertTrue(world.error().contains("Did you mean \"safe.chest\"?"), world.error());
    assertFalse(
        world.error().contains("1234567") || world.error().contains("secret"), world.error());
    assertEquals("", world.output());
  }

  @Test
  void aPageIsNeverWrittenOverAFile() throws IOException {
    Path page = folder.resolve("page.txt");
    assertEquals(
        ExitCode.DONE,
        World.run("", "summary", "--answers", HERON, "--out", page.toString()).code());
    String written = Files.readString(page);
    assertEquals(
        ExitCode.CANNOT_CREATE,
        World.run("", "summary", "--answers", HERON, "--out", page.toString()).code());
    assertEquals(written, Files.readString(page));
  }

  @Test
  void theEmbeddedBankIsSoundAndABrokenOneIsNot() throws IOException {
    assertEquals(ExitCode.DONE, World.run("", "check").code());
    assertEquals(ExitCode.DONE, World.run("", "check", "question-banks/core").code());
    Files.writeString(
        folder.resolve("bank.json"), "{\"format\": \"closehand-bank\", \"schema\": 1}");
    World world = World.run("", "check", folder.toString());
    assertEquals(ExitCode.BAD_DATA, world.code());
    assertTrue(world.output().contains("[missing-file]"), world.output());
    assertEquals(
        ExitCode.NO_INPUT, World.run("", "check", folder.resolve("nowhere").toString()).code());
  }

  @Test
  void aScriptThatEndsEarlyIsUnfinishedAndGoesOnWhereItStood() throws IOException {
    World first = World.run("1\n1\ny\ny\n", "interview", "--home", folder.toString());
    assertEquals(ExitCode.UNFINISHED, first.code(), first.error());
    String name = caseName();
    World second = World.run("1\n2\n", "interview", name, "--home", folder.toString());
    assertEquals(ExitCode.UNFINISHED, second.code(), second.error());
    assertTrue(
        second.output().contains("Welcome back. We ask this again after every break."),
        second.output());
    assertTrue(second.output().contains("CON-02."), second.output());
    assertTrue(
        World.run("", "advise", name, "--home", folder.toString())
            .output()
            .contains("SUGGESTIONS"));
  }

  @Test
  void aLineThatCannotBeFollowedEndsTheScriptWithItsNumberAndKeepsTheRest() throws IOException {
    World world = World.run("# begins\n1\nnonsense\n", "interview", "--home", folder.toString());
    assertEquals(ExitCode.BAD_DATA, world.code());
    assertTrue(
        world.output().contains("Line 3 of the answers could not be followed."), world.output());
    assertEquals(1, Files.list(folder).filter(f -> f.toString().endsWith(".json")).count());
  }

  @Test
  void withoutConsentTheSessionEndsAndTheCaseCanBeDeleted() throws IOException {
    World world = World.run("3\ndelete\n", "interview", "--home", folder.toString());
    assertEquals(ExitCode.DONE, world.code(), world.error());
    assertTrue(world.output().contains("STOP"), world.output());
    try (Stream<Path> files = Files.list(folder)) {
      assertEquals(List.of(), files.toList());
    }
  }

  @Test
  void chestPainNowEndsTheSessionWithTheEmergencyTextAlone() throws IOException {
    World world =
        World.run(
            "1\n1\ny\ny\n1\n3\n1\n=hand up\n2\nn\n1\n1\n2\n",
            "interview",
            "--home",
            folder.toString());
    assertEquals(ExitCode.DONE, world.code(), world.output());
    String after = world.output().substring(world.output().indexOf("STOP."));
    assertTrue(after.contains("emergency number"), after);
    String page = World.run("", "summary", caseName(), "--home", folder.toString()).output();
    assertFalse(page.contains("WHAT TO TRY"), page);
    assertTrue(page.contains("STOP"), page);
  }

  @Test
  void aStopThatWasASlipIsAnsweredAgainAndNothingElseIsAskedWhileItStands() {
    String until = "1\n1\ny\ny\n1\n3\n1\n=hand up\n2\nn\n1\n1\n2\n";
    World slip = World.run(until + "b\n1\n", "interview", "--home", folder.toString());
    assertTrue(slip.output().contains("SAF-04."), slip.output());
    World stays = World.run(until + "b\n2\n", "interview", "--home", folder.toString());
    assertEquals(ExitCode.DONE, stays.code());
    assertFalse(stays.output().contains("SAF-04."), stays.output());
  }

  @Test
  void aWarningSignNeverDoesNotApplyAndConsentNeedsAnAnswer() {
    World consent = World.run("x\n", "interview", "--home", folder.toString());
    assertFalse(consent.output().contains("CON-06."), consent.output());
    World sign =
        World.run(
            "1\n1\ny\ny\n1\n3\n1\n=hand up\n2\nn\nx\n", "interview", "--home", folder.toString());
    assertTrue(sign.output().replace('\n', ' ').contains("it applies to everybody"), sign.output());
    assertFalse(sign.output().contains("SAF-02."), sign.output());
  }

  @Test
  void aFileOfAnswersCannotLowerAStop() throws IOException {
    Path file =
        Files.writeString(
            folder.resolve("b.json"), "{\"safe.chest\": \"now\", \"cleared\": [\"C-CHEST\"]}");
    assertEquals(ExitCode.BAD_DATA, World.run("", "advise", "--answers", file.toString()).code());
  }

  @Test
  void theLineFaceSaysNothingButPlainText() {
    World world =
        World.run(
            "1\n?\nh\no\ns\np\nb\n1\nk\nd\nx\n",
            "interview",
            "--ascii",
            "--home",
            folder.toString());
    for (String line : world.output().split("\n", -1)) {
      assertTrue(line.length() <= 72, line);
      assertTrue(line.chars().allMatch(c -> c >= ' ' && c <= '~'), line);
    }
  }

  private String caseName() throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      String file =
          files
              .map(f -> f.getFileName().toString())
              .filter(f -> f.endsWith(".json"))
              .findFirst()
              .orElseThrow();
      return file.substring(0, file.length() - ".json".length());
    }
  }
}
