package closehand.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A bank looked through, printed and compared. */
class CheckCommandTest {
  private static final Path CORE = Path.of("question-banks/core");

  @TempDir private Path folder = Path.of(".");

  private Path copy() throws IOException {
    Path copy = folder.resolve("copy");
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
    return copy;
  }

  @Test
  void aFileInPlaceOfAFolderIsCalledOne() throws IOException {
    Path file = Files.writeString(folder.resolve("bank.json"), "{}");
    World world = World.run("", "check", file.toString());
    assertEquals(ExitCode.NO_INPUT, world.code());
    assertEquals("\"" + file + "\" is a file; a folder is wanted here.\n", world.error());
  }

  private static String flat(World world) {
    return world.output().replaceAll("\\s+", " ");
  }

  @Test
  void aDeepCheckAdvisesAndNeverBlocks() {
    World world = World.run("", "check", "--deep");
    assertEquals(ExitCode.DONE, world.code(), world.output());
    assertTrue(world.output().contains("[unused-question]"), world.output());
    assertTrue(flat(world).contains("none of them stops the bank"), world.output());
    assertTrue(flat(world).contains("Looked for and not found: rules that never fire; "));
    assertTrue(world.output().lines().allMatch(l -> l.length() <= 80), world.output());
    assertTrue(world.output().contains("The bank is sound"), world.output());
    assertFalse(world.output().contains("Not proven"), world.output());
  }

  @Test
  void thePaperHoldsEveryQuestionRuleAndCautionWithItsBasis() {
    World world = World.run("", "check", "--print", "--ascii");
    assertEquals(ExitCode.DONE, world.code());
    String paper = flat(world);
    assertTrue(paper.contains("Question SAF-03: "), "questions");
    assertTrue(paper.contains("Rule R026b.L: "), "rules");
    assertTrue(paper.contains("Basis: common practice."), "basis");
    assertTrue(paper.contains("C-NECK: "), "cautions");
    assertTrue(paper.contains("Stop tingling: New tingling, numbness or weakness."), "stops");
    assertTrue(paper.contains("Task T1.L.T (and for 9 other places): Tap check"), "tasks");
    assertTrue(paper.contains("Where taps > 25: Jobs that must come quickly"), "readings");
    assertTrue(paper.contains("Before every task: It is sure that"), "what must hold");
    assertTrue(paper.contains("REVIEWED BY"), "room to sign");
    for (String line : world.output().split("\n", -1)) {
      assertTrue(line.length() <= 72 && line.chars().allMatch(c -> c >= ' ' && c <= '~'), line);
    }
  }

  @Test
  void aChangedRuleIsToldInWords() throws IOException {
    Path changed = copy();
    Path hands = changed.resolve("rules/hands.json");
    String text = Files.readString(hands);
    String title = "\"title\": \"One hand for pointer and side cells\"";
    assertTrue(text.contains(title));
    Files.writeString(hands, text.replace(title, "\"title\": \"One hand for both\""));
    World world = World.run("", "check", changed.toString(), "--diff", CORE.toString());
    assertEquals(ExitCode.DONE, world.code(), world.output());
    assertTrue(
        flat(world).contains("Changed: Rule R025.L. Was: One hand for pointer and side cells."),
        world.output());
    assertTrue(flat(world).contains("Is now: One hand for both."), world.output());
    assertTrue(flat(world).contains("2 differences."), world.output());
  }

  @Test
  void aChangedTaskIsToldInWords() throws IOException {
    Path changed = copy();
    Path tasks = changed.resolve("tasks.json");
    String text = Files.readString(tasks);
    String words = "\"words\": \"Something in the chest, or hard breathing\"";
    assertTrue(text.contains(words));
    Files.writeString(tasks, text.replace(words, "\"words\": \"The chest\""));
    World world = World.run("", "check", changed.toString(), "--diff", CORE.toString());
    assertTrue(
        flat(world).contains("Changed: Stop chest. Was: Something in the chest"), world.output());
    assertTrue(flat(world).contains("Is now: The chest."), world.output());
    Files.writeString(tasks, text.replace("\"id\": \"chest\"", "\"id\": \"breath\""));
    World wrong = World.run("", "check", changed.toString());
    assertEquals(ExitCode.BAD_DATA, wrong.code());
    assertTrue(flat(wrong).contains("\"breath\" is not one of signal"), wrong.output());
  }

  @Test
  void theSameBankHasNoDifference() {
    World world = World.run("", "check", CORE.toString(), "--diff", CORE.toString());
    assertEquals(ExitCode.DONE, world.code());
    assertTrue(flat(world).contains("The two banks say the same"), world.output());
    assertEquals(
        ExitCode.NO_INPUT,
        World.run("", "check", "--diff", folder.resolve("nowhere").toString()).code());
  }
}
