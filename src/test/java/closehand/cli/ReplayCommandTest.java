package closehand.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;

import closehand.json.JsonReader;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/** Many cases under an old and a new bank. */
class ReplayCommandTest {
  private static final Path CORE = Path.of("question-banks/core");
  private static final String HERON = "examples/quiet-heron/answers.json";

  @TempDir private Path folder = Path.of(".");

  /** A copy of the core bank in which side cells count one point less for the right hand. */
  private Path changed() throws IOException {
    Path copy = folder.resolve("bank");
    try (Stream<Path> files = Files.walk(CORE)) {
      for (Path file : files.toList()) {
        Path to = copy.resolve(CORE.relativize(file).toString());
        if (Files.isDirectory(file)) {
          Files.createDirectories(to);
        } else {
          Files.copy(file, to);
        }
      }
    }
    Path hands = copy.resolve("rules/hands.json");
    String text = Files.readString(hands);
    String before = "\"then\": {\"support\": {\"MOUSE_SIDE_{X}\": 3}}";
    assertTrue(text.contains(before));
    Files.writeString(
        hands, text.replace(before, "\"then\": {\"support\": {\"MOUSE_SIDE_{X}\": 1}}"));
    return copy;
  }

  @Test
  void theSameBankMovesNothing() {
    World world = World.run("", "replay", "examples", "--bank", CORE.toString());
    assertEquals(ExitCode.DONE, world.code(), world.error());
    assertTrue(world.output().contains("cases compared"), world.output());
    assertTrue(world.output().matches("(?s).*moved +0\n.*"), world.output());
  }

  @Test
  void whatMovesIsToldWithTheRulesThatMoveIt() throws IOException {
    World world = World.run("", "replay", HERON, "--bank", changed().toString(), "--ascii");
    assertEquals(ExitCode.DONE, world.code(), world.error());
    String flat = world.output().replaceAll("\\s+", " ");
    assertTrue(flat.contains("Leads: MOUSE_SIDE_R, now "), flat);
    assertTrue(flat.contains("By R025.R."), flat);
    assertTrue(world.output().matches("(?s).*what leads +1\n.*"), world.output());
  }

  @Test
  void theJsonHoldsBeforeAndAfter() throws IOException {
    World world = World.run("", "replay", HERON, "--bank", changed().toString(), "--json");
    byte[] bytes = world.output().getBytes(StandardCharsets.UTF_8);
    assertTrue(JsonReader.read("out", bytes, new ArrayList<>()).isPresent(), world.output());
    String flat = world.output().replaceAll("\\s+", " ");
    assertTrue(flat.contains("\"in\" : [ \"leader\""), flat);
    assertTrue(flat.contains("\"byRules\" : [ \"R025.R\" ]"), flat);
    assertTrue(flat.contains("\"movedCases\" : 1"), flat);
  }

  @Test
  void aBrokenCaseIsReportedAndSkipped() throws IOException {
    Path broken = Files.writeString(folder.resolve("broken.json"), "{\"pain.now\": ");
    Path wrong = Files.writeString(folder.resolve("wrong.json"), "{\"safe.chest\": \"secret\"}");
    World world =
        World.run(
            "",
            "replay",
            broken.toString(),
            wrong.toString(),
            folder.resolve("nowhere.json").toString(),
            HERON,
            "--bank",
            CORE.toString());
    assertEquals(ExitCode.BAD_DATA, world.code());
    assertTrue(world.output().matches("(?s).*cases compared +1\n.*"), world.output());
    assertTrue(world.output().matches("(?s).*skipped, not read +3\n.*"), world.output());
    assertTrue(world.error().contains("broken.json"), world.error());
    assertFalse(world.error().contains("secret"), "no answer in a message: " + world.error());
  }

  @Test
  @EnabledOnOs({OS.LINUX, OS.MAC})
  void aPipeInPlaceOfACaseIsNotWaitedFor() throws IOException, InterruptedException {
    Path pipe = folder.resolve("pipe.json");
    assertEquals(0, new ProcessBuilder("mkfifo", pipe.toString()).start().waitFor());
    World world =
        assertTimeoutPreemptively(
            Duration.ofMinutes(1),
            () -> World.run("", "replay", pipe.toString(), HERON, "--bank", CORE.toString()));
    assertEquals(ExitCode.BAD_DATA, world.code());
    assertTrue(world.error().contains("not-a-file"), world.error());
    assertTrue(world.output().matches("(?s).*cases compared +1\n.*"), world.output());
  }

  @Test
  void savedCasesAreReplayedByName() throws IOException {
    Path home = folder.resolve("home");
    World.run("1\n1\ny\ny\n", "interview", "--home", home.toString());
    String file;
    try (Stream<Path> files = Files.list(home)) {
      file =
          files
              .map(f -> f.getFileName().toString())
              .filter(f -> f.endsWith(".json"))
              .findFirst()
              .orElseThrow();
    }
    String name = file.substring(0, file.length() - ".json".length());
    World world =
        World.run("", "replay", name, "--home", home.toString(), "--bank", CORE.toString());
    assertEquals(ExitCode.DONE, world.code(), world.error());
    assertTrue(world.output().matches("(?s).*cases compared +1\n.*"), world.output());
  }

  @Test
  @EnabledOnOs({OS.LINUX, OS.MAC})
  void linksInAFolderAndSealedCasesAreLeftOutAndSaid() throws IOException {
    Path home = folder.resolve("home");
    World.typed(
        List.of("four words are enough", "four words are enough"),
        "\n\n2\n1\n1\n:q\n",
        "interview",
        "--home",
        home.toString());
    Path cases = Files.createDirectory(folder.resolve("cases"));
    Files.copy(Path.of(HERON), cases.resolve("heron.json"));
    Files.createSymbolicLink(cases.resolve("other.json"), Path.of(HERON).toAbsolutePath());
    Files.createSymbolicLink(cases.resolve("folder"), Path.of("examples").toAbsolutePath());
    Files.createSymbolicLink(cases.resolve("note.txt"), Path.of("README.md").toAbsolutePath());
    World world =
        World.run("", "replay", cases.toString(), home.toString(), "--bank", CORE.toString());
    assertEquals(ExitCode.BAD_DATA, world.code());
    assertTrue(world.output().matches("(?s).*cases compared +1\n.*"), world.output());
    assertTrue(world.output().matches("(?s).*skipped, not read +3\n.*"), world.output());
    assertTrue(world.error().contains("other.json [link] This is a link"), world.error());
    assertTrue(world.error().contains("folder [link] This is a link"), world.error());
    assertTrue(world.error().contains("[sealed] This case is sealed"), world.error());
    assertFalse(world.error().contains("note.txt"), world.error());
    String name = Cases.at(home).store().names().get(0);
    World named =
        World.run("", "replay", name, "--home", home.toString(), "--bank", CORE.toString());
    assertTrue(named.error().contains("closehand unlock"), named.error());
    assertEquals(ExitCode.BAD_DATA, named.code());
  }

  /**
   * Only the answers of a case are read, so a long history costs nothing and its faults are none.
   */
  @Test
  void aSavedCaseMovesAsItsAnswersDo() throws IOException {
    Path home = folder.resolve("home");
    World.run("1\n1\ny\ny\n", "interview", "--home", home.toString());
    Path file = Cases.at(home).store().path(Cases.at(home).store().names().get(0));
    Files.writeString(file, Files.readString(file).replaceFirst("\"history\" : \\[", "$0 7,"));
    World world = World.run("", "replay", file.toString(), "--bank", changed().toString());
    assertEquals(ExitCode.DONE, world.code(), world.error());
    assertTrue(world.output().matches("(?s).*cases compared +1\n.*"), world.output());
  }

  @Test
  void aNewBankIsNeeded() {
    assertEquals(ExitCode.USAGE, World.run("", "replay", HERON).code());
    assertEquals(
        ExitCode.NO_INPUT,
        World.run("", "replay", HERON, "--bank", folder.resolve("none").toString()).code());
  }

  /** A copy of the core bank in which one text of one file is another. */
  private Path with(String file, String before, String after) throws IOException {
    Path copy = changed();
    Files.copy(
        CORE.resolve("rules/hands.json"),
        copy.resolve("rules/hands.json"),
        java.nio.file.StandardCopyOption.REPLACE_EXISTING);
    Path changed = copy.resolve(file);
    String text = Files.readString(changed);
    assertTrue(text.contains(before), before);
    Files.writeString(changed, text.replace(before, after));
    return copy;
  }

  @Test
  void whereOnlyTheOrderOfSuggestionsMovedTheRulesAreGivenToo() throws IOException {
    Path bank = with("rules/place-and-rules.json", "\"ONSCREEN\": 1", "\"ONSCREEN\": 2");
    World world = World.run("", "replay", "examples", "--bank", bank.toString(), "--json");
    assertEquals(ExitCode.DONE, world.code(), world.error());
    String flat = world.output().replaceAll("\\s+", " ");
    assertTrue(flat.contains("\"in\" : [ \"order\" ]"), flat);
    assertTrue(flat.contains("\"byRules\" : [ \"R109\" ]"), flat);
  }

  @Test
  void whereEqualPointsAreToldApartInAnotherWayThatIsTheReason() throws IOException {
    Path bank = with("approaches.json", "\"costClass\": [\"B\"", "\"costClass\": [\"E\"");
    World world = World.run("", "replay", "examples", "--bank", bank.toString());
    assertEquals(ExitCode.DONE, world.code(), world.error());
    String flat = world.output().replaceAll("\\s+", " ");
    assertTrue(flat.contains("No rule moved it: equal points are told apart"), flat);
    assertFalse(world.output().matches("(?s).*moved +0\n.*"), flat);
  }

  @Test
  void aFolderWithoutCasesIsSaidPlainly() throws IOException {
    Path empty = Files.createDirectory(folder.resolve("empty"));
    Files.writeString(empty.resolve("note.txt"), "no case");
    World world = World.run("", "replay", empty.toString(), "--bank", CORE.toString());
    assertEquals(ExitCode.NO_INPUT, world.code());
    assertEquals("", world.output());
    assertTrue(world.error().contains("There is no case here to replay"), world.error());
  }

  @Test
  @EnabledOnOs({OS.LINUX, OS.MAC})
  void oneFileIsCountedOnceWhicheverWaysLeadToIt() throws IOException {
    Path cases = Files.createDirectory(folder.resolve("cases"));
    Path file = Files.copy(Path.of(HERON), cases.resolve("heron.json"));
    Path link = Files.createSymbolicLink(folder.resolve("link.json"), file);
    Path other = Files.createSymbolicLink(folder.resolve("other"), cases);
    World world =
        World.run(
            "",
            "replay",
            file.toString(),
            cases.toString(),
            link.toString(),
            other.resolve("heron.json").toString(),
            cases + "/../cases/heron.json",
            "--bank",
            CORE.toString());
    assertEquals(ExitCode.DONE, world.code(), world.error());
    assertTrue(world.output().matches("(?s).*cases compared +1\n.*"), world.output());
  }
}
