package closehand.cli;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Lines of the player's page that nobody may miss, however little room there is. */
class CarefulPagesTest {
  private static final Path HERON = Path.of("examples/quiet-heron/answers.json");

  @TempDir private Path folder = Path.of(".");

  /** The player's page of an invented player whose answers are changed here, on one line. */
  private String page(String name, String from, String to) throws IOException {
    String answers = Files.readString(HERON);
    String changed = answers.replaceFirst(from, to);
    assertFalse(changed.equals(answers), "nothing was changed");
    Path file = Files.writeString(folder.resolve(name), changed);
    World world = World.run("", "summary", "--answers", file.toString(), "--for", "player");
    assertTrue(world.code() == ExitCode.DONE, world.error());
    return world.output().replaceAll("\\s+", " ");
  }

  @Test
  void highPainTodayComesBeforeAnyLengthOfPlay() throws IOException {
    String page = page("pain.json", "\"pain.now\": *[0-9]+", "\"pain.now\": 9");
    assertTrue(page.contains("WHEN TO PAUSE. Not today: your pain is high."), page);
    assertTrue(page.contains("With pain at 7 or more, no timed tasks today."), page);
    assertTrue(page.contains("ask your health team."), page);
  }

  @Test
  void theHandThatDrivesIsNamedBesideWhatAHandWorks() throws IOException {
    String page =
        page(
            "drive.json",
            "\"seat.type\": \"deskChair\"",
            "\"seat.type\": \"poweredChair\", \"chair.drive\": \"hand\"");
    assertTrue(page.contains("The part you drive with stays for driving; use others"), page);
    assertTrue(page.contains("clinician decide together if it may do more."), page);
    assertTrue(page.contains("Not with the hand you drive with."), page);
  }
}
