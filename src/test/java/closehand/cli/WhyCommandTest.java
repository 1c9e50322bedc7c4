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

  @Test
  void whetherTheLeadIsFirmIsSaidWithTheOpenAnswersThatCouldOverturnIt() throws IOException {
    String firm = flat(World.run("", "why", "--answers", "examples/silver-birch/answers.json"));
    assertTrue(firm.contains("It comes first now. That is firm: no open answer"), firm);
    World open = World.run("", "why", "--answers", provisional().toString());
    assertTrue(flat(open).contains("It comes first now. That is not firm yet."), flat(open));
    assertTrue(
        flat(open).contains("Open answers that could still change it: Job of each hand; "),
        flat(open));
    String json = flat(World.run("", "why", "--answers", provisional().toString(), "--json"));
    assertTrue(json.contains("\"firm\" : false, \"couldOverturn\" : [ \"hand.R.role\", "), json);
    assertTrue(json.contains("\"notCleared\" : [ ]"), json);
  }

  /** An example in which the job of the right hand was not asked yet. */
  private Path provisional() throws IOException {
    String whole = Files.readString(Path.of("examples/silver-birch/answers.json"));
    return Files.writeString(
        folder.resolve("p.json"), whole.replaceAll("\"hand.R.role\": \"[^\"]*\",", ""));
  }

  @Test
  void whatIsNotClearedIsSaidInWordsAndJson() throws IOException {
    String whole = Files.readString(Path.of("examples/silver-birch/answers.json"));
    String without = whole.replaceAll("\"safe.chest\": \"[^\"]*\",", "");
    assertFalse(without.equals(whole));
    Path file = Files.writeString(folder.resolve("c.json"), without);
    World world = World.run("", "why", "--answers", file.toString());
    assertTrue(flat(world).contains("That is not firm yet."), flat(world));
    assertTrue(
        flat(world).contains("Not cleared yet, so ask these safety questions first: "),
        flat(world));
    String json = flat(World.run("", "why", "--answers", file.toString(), "--json"));
    assertTrue(json.contains("\"notCleared\" : [ { \"code\" : "), json);
    assertTrue(json.contains("\"waitsFor\" : [ \"safe.chest\" ]"), json);
    Path said =
        Files.writeString(
            folder.resolve("d.json"),
            whole.replaceAll(
                "\"safe.chest\": \"[^\"]*\",", "\"safe.chest\": {\"absent\": \"declined\"},"));
    String declined = flat(World.run("", "why", "--answers", said.toString()));
    assertTrue(declined.contains("you would rather not say, and that is fine"), declined);
  }

  @Test
  void aStopForEverythingIsNoErrorAndWhatIsSaidIsKindAndWhole() throws IOException {
    Path file = Files.writeString(folder.resolve("s.json"), "{\"safe.chest\": \"now\"}");
    for (String[] words :
        new String[][] {
          {"why", "--answers", file.toString()},
          {"why", "--answers", file.toString(), "MOUSE_PLAIN"},
          {"why", "--answers", file.toString(), "C-NECK", "--all"}
        }) {
      World world = World.run("", words);
      assertEquals(ExitCode.DONE, world.code(), world.error());
      assertEquals("", world.error());
      assertTrue(world.output().startsWith("STOP"), world.output());
      assertTrue(flat(world).contains("emergency number"), world.output());
      assertFalse(flat(world).contains("RULES THAT APPLY"), world.output());
    }
    World json = World.run("", "why", "--answers", file.toString(), "--json");
    assertEquals(ExitCode.DONE, json.code(), json.error());
    assertTrue(flat(json).contains("\"withheld\" : true, \"stops\" : [ \"C-"), json.output());
  }

  @Test
  void aHindranceNamesItsFileAndItsPlaceInIt() {
    String json = flat(World.run("", "why", "--answers", HERON, "MOUSE_SIDE_L", "--json"));
    assertTrue(json.contains("\"file\" : \"core/rules/hands.json\", \"at\" : \"/rules/"), json);
  }

  @Test
  void anUndecidedControlIsNotSaidToBeOutOfReach() throws IOException {
    Path file =
        Files.writeString(
            folder.resolve("u.json"), "{\"safe.chest\": \"no\", \"age.band\": \"18+\"}");
    String text = flat(World.run("", "why", "--answers", file.toString(), "MOUSE_PLAIN"));
    assertTrue(text.contains("Undecided: open answers could still bring it in"), text);
    assertTrue(text.contains("Answers that are still open can"), text);
    assertFalse(text.contains("No other single answer"), text);
  }

  @Test
  void theHelpKeepsNamesWhole() {
    World world = World.run("", "why", "--help");
    assertTrue(world.output().contains("R.T: a part of the body"), world.output());
    for (String line : world.output().split("\n", -1)) {
      assertFalse(line.endsWith("R.") || line.strip().startsWith("T,"), line);
    }
  }

  @Test
  void warningSignsBehindEveryRuleStayFoldedUntilAskedFor() {
    String answers = "examples/amber-otter/answers.json";
    String folded = flat(World.run("", "why", "--answers", answers));
    String unfolded = flat(World.run("", "why", "--answers", answers, "--all"));
    assertTrue(folded.contains(" on warning signs."), folded);
    assertFalse(unfolded.contains("answers on warning signs."), unfolded);
  }
}
