package closehand.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import closehand.json.JsonReader;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** {@code closehand why}, and the same question inside an interview. */
class WhyCommandTest {
  private static final String HERON = "examples/quiet-heron/answers.json";

  @TempDir private Path folder = Path.of(".");

  private static String flat(World world) {
    return world.output().replaceAll("\\s+", " ");
  }

  @Test
  void everyRuleIsToldWithTheAnswersUsed() {
    World world = World.run("", "why", "--answers", HERON, "MOUSE_SIDE_R", "--ascii");
    assertEquals(ExitCode.DONE, world.code(), world.error());
    assertTrue(flat(world).contains("+3 points: R025.R"), world.output());
    assertTrue(flat(world).contains("Answers used: "), world.output());
    assertTrue(
        flat(world)
            .contains(
                "Not so: the most side cells one digit of your right hand reaches is 5 or less"),
        world.output());
    for (String line : world.output().split("\n", -1)) {
      assertTrue(line.length() <= 72 && line.chars().allMatch(c -> c >= ' ' && c <= '~'), line);
    }
  }

  @Test
  void workedOutFactsUnfoldWhenAskedFor() {
    World folded = World.run("", "why", "--answers", HERON, "MOUSE_SIDE_R");
    World unfolded = World.run("", "why", "--answers", HERON, "MOUSE_SIDE_R", "--all");
    assertFalse(flat(folded).contains("so, since "), folded.output());
    assertTrue(flat(unfolded).contains("so, since "), unfolded.output());
  }

  @Test
  void theJsonCanBeRead() {
    World world = World.run("", "why", "--answers", HERON, "mouse_side_l", "--json");
    assertEquals(ExitCode.DONE, world.code());
    byte[] bytes = world.output().getBytes(StandardCharsets.UTF_8);
    assertTrue(JsonReader.read("out", bytes, new ArrayList<>()).isPresent());
    assertTrue(world.output().contains("\"status\" : \"ruled-out\""), world.output());
  }

  @Test
  void withoutANameTheLeadIsExplainedWithWhatWouldTurnItAndWhatDecidesIt() {
    World world = World.run("", "why", "--answers", "examples/silver-birch/answers.json");
    assertTrue(flat(world).contains("WHAT WOULD CHANGE THIS"), world.output());
    assertTrue(flat(world).contains("told, not seen: look once"), world.output());
    assertTrue(flat(world).contains("alone decide it"), world.output());
    World other =
        World.run("", "why", "--answers", "examples/amber-otter/answers.json", "MOUSE_SIDE_R");
    assertTrue(
        flat(other).contains("6 of them or more\u201d (now 4), this would come first."),
        other.output());
  }

  @Test
  void aFirmLeadSaysHowManyQuestionsCannotChangeItAnyMore() throws IOException {
    String whole = Files.readString(Path.of("examples/silver-birch/answers.json"));
    Path file =
        Files.writeString(
            folder.resolve("b.json"), whole.replaceAll("\"goal.main\": \"[^\"]*\",", ""));
    World world = World.run("", "why", "--answers", file.toString());
    assertTrue(flat(world).contains("cannot change it."), world.output());
  }

  @Test
  void theJsonGivesFactFromToAndTheLeadBeforeAndAfter() {
    String json =
        World.run("", "why", "--answers", "examples/amber-otter/answers.json", "--json").output();
    String flat = json.replaceAll("\\s+", " ");
    assertTrue(
        flat.contains(
            "\"fact\" : \"voice.chat\", \"from\" : true, \"to\" : false, \"stepsAway\" : 1"),
        json);
    assertTrue(flat.contains("\"before\" : \"SW_LARGE\", \"after\" : \"VOICE\""), json);
    assertTrue(flat.contains("\"settledBy\" : { \"leader\" : \"SW_LARGE\""), json);
  }

  @Test
  void aNameThatIsNothingIsAUsageMistakeWithAHint() {
    World world = World.run("", "why", "--answers", HERON, "PAD_STDD");
    assertEquals(ExitCode.USAGE, world.code());
    assertTrue(world.error().contains("Did you mean \"PAD_STD\"?"), world.error());
    assertEquals(ExitCode.USAGE, World.run("", "why").code());
    assertEquals(ExitCode.NO_INPUT, World.run("", "why", "no-such-case").code());
  }

  @Test
  void whereASessionEndsNothingButTheNoticeIsSaid() throws IOException {
    Path file = Files.writeString(folder.resolve("a.json"), "{\"safe.chest\": \"now\"}");
    World world = World.run("", "why", "--answers", file.toString(), "MOUSE_PLAIN");
    assertTrue(world.output().contains("STOP"), world.output());
    assertFalse(world.output().contains("MOUSE_PLAIN"), world.output());
  }

  @Test
  void whereNothingLeadsASentenceSaysSoAndWhy() throws IOException {
    Path none = Files.writeString(folder.resolve("none.json"), "{\"safe.chest\": \"no\"}");
    World world = World.run("", "why", "--answers", none.toString());
    assertEquals(ExitCode.DONE, world.code(), world.error());
    assertTrue(flat(world).contains("No control comes first yet: none is suggested"), flat(world));
    assertEquals("", world.error());
    World json = World.run("", "why", "--answers", none.toString(), "--json");
    assertEquals(ExitCode.DONE, json.code());
    assertTrue(flat(json).contains("\"subject\" : null, \"leader\" : null"), json.output());
    Path held =
        Files.writeString(folder.resolve("held.json"), "{\"safe.chest\": \"recentUnchecked\"}");
    World waiting = World.run("", "why", "--answers", held.toString());
    assertTrue(flat(waiting).contains("suggestions wait for a health check"), flat(waiting));
    Path now = Files.writeString(folder.resolve("now.json"), "{\"safe.chest\": \"now\"}");
    assertTrue(World.run("", "why", "--answers", now.toString()).output().startsWith("STOP"));
  }

  @Test
  void theLineFaceExplainsByNameAndByNumber() {
    World world =
        World.run("1\ne MOUSE_PLAIN\ne\n1\ne nonsense\n", "interview", "--home", folder.toString());
    assertTrue(world.output().contains("[MOUSE_PLAIN]"), world.output());
    assertTrue(world.output().contains("STILL WAITING FOR ANSWERS"), world.output());
    assertTrue(world.output().contains("There is no control, input, body part"), world.output());
    assertTrue(World.run("h\n", "interview", "--home", folder.toString()).output().contains(" e "));
  }
}
