package closehand.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Questions of the embedded bank as somebody meets them line by line. */
class QuestionsInWordsTest {
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
    return world.output().replaceAll("\\s+", " ");
  }

  private static int count(String text, String part) {
    return text.split(java.util.regex.Pattern.quote(part), -1).length - 1;
  }

  @Test
  void actionsAreNamedByNumberWordOrCodeAndListedOnce() {
    World world = interview("1\n:j GAM-01\n=FPA\n:j GAM-06\njump\n2\nFPA04 sprint\n:o GAM\n");
    String said = flowing(world);
    assertEquals(1, count(said, "24 Torch (FPA24)"), said);
    assertEquals(2, count(said, "The same list as before; r shows it again."), said);
    assertTrue(said.contains("Noted: Jump (FPA04)."), said);
    assertTrue(said.contains("Noted: Move (FPA02)."), said);
    assertTrue(said.contains("Noted: Jump (FPA04), Sprint (FPA05)."), said);
    assertTrue(said.contains("actions you must have: Jump (FPA04)"), said);
  }

  @Test
  void afterASlipOnlyWhatWasWrongIsSaid() throws IOException {
    interview("1\n:j GAM-01\n=FPA\n:j GAM-06\n");
    String name = Cases.at(folder).store().names().get(0);
    World world =
        World.typed(
            "1\n1\n:j GAM-06\nfoo\njump\nq\n",
            "interview",
            name,
            "--line",
            "--home",
            folder.toString());
    String said = flowing(world);
    int slip = said.indexOf("\"foo\" is not in the list.");
    assertTrue(slip > 0, said);
    assertTrue(
        said.substring(slip)
            .startsWith(
                "\"foo\" is not in the list. Give a number from 1 to 24, a name or a code, such as 1 or"
                    + " Look and aim. r shows the list again. > Noted: Jump (FPA04)."),
        said.substring(slip));
  }

  @Test
  void whoDoesNotUseSpeechIsNotAskedAboutCommandsAloud() {
    World world = interview("1\n:j VOI-01\n1\n1\nn\n");
    String said = flowing(world);
    assertTrue(said.contains("Do you use voice chat while you play?"), said);
    assertFalse(said.contains("commands aloud"), said);
    assertFalse(said.contains("VOI-03."), said);
    assertTrue(
        flowing(interview("1\n:j VOI-01\n2\n1\nn\n"))
            .contains("Comfortable saying commands aloud"));
  }

  @Test
  void aPlayerAloneReadsNoHintsForWatchingSomebody() {
    String start = "1\n:j SAF-01\n?\n:j SAF-06\n?\n:j VOI-03\n:j SIT-02\n?\n";
    String alone = flowing(interview(start, "--asker", "player"));
    assertTrue(alone.contains("Why: These signs can need a doctor at once"), alone);
    assertTrue(alone.contains("stop and call the emergency number."), alone);
    assertFalse(alone.contains("Look at the face"), alone);
    assertFalse(alone.contains("The player usually knows"), alone);
    String beside = flowing(interview(start, "--asker", "volunteer"));
    assertTrue(beside.contains("Look at the face"), beside);
  }

  @Test
  void theMovementsThatWaitAreNamedInTheMiddleOfTheirQuestion() {
    World world = interview("1\n:j SIT-01\n1 1 1 1 1 1 1 1 1 1\n");
    String said = flowing(world);
    assertTrue(
        said.contains("Left open: Other parts that move (head turn, head back, chin)."), said);
  }

  @Test
  void aMessageNamesTheGameByItsPlaceAndEveryCodeByItsName() throws IOException {
    Path file =
        Files.writeString(
            folder.resolve("a.json"),
            "{\"games\": [{\"genre\": \"FPX\"}, {\"genre\": \"STA\", \"must\": [\"FOO\"]}]}");
    String error = World.run("", "advise", "--answers", file.toString()).error();
    assertTrue(error.contains("not an answer of \"genre\" of the first game."), error);
    assertTrue(error.contains("RAC (Racing)"), error);
    assertTrue(error.contains("\"must\" of the second game names an action"), error);
    assertTrue(error.contains("STA01 (Move)"), error);
    assertFalse(error.contains("games.1"), error);
  }
}
