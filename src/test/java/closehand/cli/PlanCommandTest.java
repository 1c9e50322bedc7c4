package closehand.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The plan on the command line: what it prints, what it refuses, how it ends. */
class PlanCommandTest {
  private static final String CALM = "examples/silver-birch/answers.json";

  private static final String HERON = "examples/quiet-heron/answers.json";

  @TempDir Path folder;

  @Test
  void jsonHasThePromisedMembers() {
    World world = World.run("", "plan", "--answers", CALM, "--game", "0", "--json");
    assertTrue(world.code() == 0 || world.code() == ExitCode.UNFINISHED, world.error());
    for (String member :
        new String[] {
          "plans", "game", "approaches", "cost", "bound", "proven", "assignments", "action",
          "input", "layer", "mode", "effector", "runnerUp", "extra", "leftOut", "effectors",
          "perMinute", "heldShare", "light", "settings"
        }) {
      assertTrue(world.output().contains("\"" + member + "\""), member);
    }
  }

  @Test
  void theExitCodeSaysWhetherThePlanIsProven() {
    World world = World.run("", "plan", "--answers", CALM, "--game", "0", "--json");
    boolean proven = world.output().contains("\"proven\" : true");
    assertEquals(proven ? 0 : ExitCode.UNFINISHED, world.code());
  }

  @Test
  void theListCanBeReadAloud() {
    World world = World.run("", "plan", "--answers", CALM, "--game", "0", "--ascii");
    assertTrue(world.output().contains("CONTROL PLAN: "), world.output());
    assertTrue(
        world.output().replace('\n', ' ').contains("No published method was made"),
        "said on every plan");
    for (String line : world.output().split("\n", -1)) {
      assertTrue(line.length() <= 72, line);
    }
  }

  @Test
  void mistakesOnTheCommandLineAreToldApartFromMistakesInFiles() {
    assertEquals(64, World.run("", "plan", "--answers", CALM, "--game", "9").code());
    assertEquals(64, World.run("", "plan", "--answers", CALM, "--approaches", "MICE").code());
    assertEquals(64, World.run("", "plan", "--answers", CALM, "--max-parts", "0").code());
    assertEquals(64, World.run("", "plan", "--answers", CALM, "--seconds", "-1").code());
    assertEquals(64, World.run("", "plan", "--answers", CALM, "--set", "jump").code());
    assertEquals(64, World.run("", "plan", "--answers", CALM, "--set", "jump=Z9").code());
    assertEquals(64, World.run("", "plan", "--answers", CALM, "--explain", "flying").code());
  }

  @Test
  void actionsCanBeChangedAddedAndTakenAwayInTheAnswers() throws IOException {
    Path file =
        answers(
            "{\"id\": \"TBS13\", \"drop\": true},"
                + " {\"id\": \"MINE\", \"name\": \"Shuffle\", \"perMinute\": 2}");
    World world = World.run("", "plan", "--answers", file.toString(), "--json");
    assertTrue(world.output().contains("\"MINE\""), world.output() + world.error());
    assertFalse(world.output().contains("\"TBS13\""));
  }

  @Test
  void aBadActionIsAProblemWithItsPlace() throws IOException {
    assertProblem("{\"id\": \"TBS02\", \"perMinute\": -1}", "perMinute");
    assertProblem("{\"id\": \"TBS02\", \"coPress\": [\"TBS02\"]}", "together with itself");
    assertProblem("{\"id\": \"TBS02\", \"coPress\": [\"XYZ\"]}", "no action of this game");
    StringBuilder many = new StringBuilder("{\"id\": \"A0\"}");
    for (int i = 1; i < 500; i++) {
      many.append(", {\"id\": \"A").append(i).append("\"}");
    }
    assertProblem(many.toString(), "a plan can have");
  }

  @Test
  void wishesThatCannotBeKeptTogetherAreNamedAndNoOthers() {
    String[] clashing = {
      "plan", "--answers", HERON, "--game", "0", "--set", "Build menu=B3", "--set", "Save=B3"
    };
    World text = World.run("", clashing);
    assertTrue(text.output().contains("\"Build menu\" sits on side cell B3"), text.output());
    assertTrue(text.output().contains("\"Save\" sits on side cell B3"), text.output());
    assertFalse(text.output().contains("Left out, and why"), text.output());
    assertEquals(ExitCode.UNFINISHED, text.code());
  }

  @Test
  void oneActionCannotBeWishedInTwoPlaces() {
    World world =
        World.run("", "plan", "--answers", HERON, "--set", "Build menu=B3", "--set", "build=B1");
    assertEquals(64, world.code());
    assertTrue(world.error().contains("wished in two places"), world.error());
  }

  @Test
  void theSheetIsTheSamePlan() {
    World plan = World.run("", "plan", "--answers", CALM);
    World sheet = World.run("", "summary", "--for", "setup", "--answers", CALM);
    Matcher lines =
        Pattern.compile("(?m)^\u2022 (\\S+)[^:\n]*: (\\S+)[^:\n]*, (press|hold|move)\\.$")
            .matcher(plan.output());
    int compared = 0;
    while (lines.find()) {
      String action = lines.group(1);
      String input = lines.group(2).replace(",", "");
      assertTrue(
          sheet
              .output()
              .lines()
              .anyMatch(l -> l.startsWith(action) && l.indexOf(input) > action.length()),
          lines.group());
      compared++;
    }
    assertTrue(compared > 3, plan.output());
    assertEquals(uses(plan.output()), uses(sheet.output()));
  }

  private static java.util.List<String> uses(String text) {
    return text.lines().filter(l -> l.startsWith("You play with: ")).toList();
  }

  private void assertProblem(String actions, String words) throws IOException {
    World world = World.run("", "plan", "--answers", answers(actions).toString());
    assertEquals(65, world.code(), world.error());
    assertTrue(world.error().contains(words), world.error());
    assertTrue(world.error().contains("/games/0/actions"), world.error());
  }

  private Path answers(String actions) throws IOException {
    String text = Files.readString(Path.of(CALM));
    int game = text.indexOf("\"genre\": \"TBS\"");
    assertTrue(game > 0, "the example has a turn-based game");
    Path file = folder.resolve("answers.json");
    Files.writeString(
        file, text.substring(0, game) + "\"actions\": [" + actions + "], " + text.substring(game));
    return file;
  }
}
