package closehand.json;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import closehand.bank.Problem;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/**
 * An answers file that cannot be read is told about by names and places only: what somebody
 * answered is never repeated in a message. Every invented answer here speaks of lavender or
 * poppies.
 */
class BrokenAnswersTest {
  private static final int MUTATIONS = 5000;
  private static final Path BROKEN = Path.of("src", "test", "resources", "answers", "broken");

  @TestFactory
  Stream<DynamicTest> everyBrokenFileIsToldAbout() throws IOException {
    List<Path> files = new ArrayList<>();
    try (Stream<Path> found = Files.list(BROKEN)) {
      found.filter(f -> f.toString().endsWith(".json")).sorted().forEach(files::add);
    }
    assertTrue(files.size() >= 40, "broken answers files found: " + files.size());
    return files.stream()
        .map(f -> DynamicTest.dynamicTest(f.getFileName().toString(), () -> findings(f)));
  }

  private static void findings(Path file) throws IOException {
    String name = file.getFileName().toString();
    List<Problem> problems = read(name, Files.readAllBytes(file));
    for (Problem problem : problems) {
      String told = problem.code() + problem.what() + problem.mend();
      assertFalse(told.contains("lavender") || told.contains("poppy"), told);
      assertTrue(UncleanText.firstUnclean(problem.toString()) < 0, told);
    }
    Golden.assertMatches(BROKEN.resolve(name.replace(".json", ".txt")), problems);
  }

  private static List<Problem> read(String name, byte[] bytes) {
    List<Problem> problems = new ArrayList<>();
    JsonReader.read(name, bytes, problems).ifPresent(v -> FlatReader.read(v, problems));
    return Problem.inLineOrder(problems);
  }

  @Test
  void aHugeFileIsNotEvenLookedAt() {
    byte[] huge = new byte[JsonReader.MAXIMUM_BYTES + 1];
    Arrays.fill(huge, (byte) '[');
    List<Problem> problems = read("huge.json", huge);
    assertEquals(List.of("too-large"), problems.stream().map(Problem::code).toList());
  }

  @Test
  void theLargestFileIsReadOrRefusedInOnePiece() {
    StringBuilder text = new StringBuilder("{\"pain.sites\": [");
    while (text.length() < JsonReader.MAXIMUM_BYTES - 100) {
      text.append("\"lavender\",");
    }
    text.append("\"lavender\"]}");
    byte[] bytes = text.toString().getBytes(StandardCharsets.UTF_8);
    assertEquals(List.of(), read("large.json", bytes));
    byte[] numbers = text.toString().replace("\"lavender\"", "1").getBytes(StandardCharsets.UTF_8);
    assertFalse(read("numbers.json", numbers).isEmpty(), "numbers are no words");
  }

  @Test
  void damageNeverThrows() throws IOException {
    byte[] sound =
        """
        {"pain": {"now": 6, "sites": ["thumb", "wrist"]}, "goal.main": "play with friends",
         "hand": {"L": {"role": "full"}, "R": {"role": "steady"}}, "tone.L": {"absent": "declined"},
         "games": [{"genre": "FPA", "mode": "solo", "accepts": ["mouse", "pad"]}, {"genre": "PUZ"}]}
        """
            .getBytes(StandardCharsets.UTF_8);
    AtomicInteger harmless = new AtomicInteger();
    InBatches.seeds(
        MUTATIONS,
        seed -> {
          List<Problem> problems = read("damaged.json", new Mutation(seed).damage(sound, sound));
          for (Problem problem : problems) {
            assertTrue(UncleanText.firstUnclean(problem.toString()) < 0, "seed " + seed);
          }
          harmless.addAndGet(problems.isEmpty() ? 1 : 0);
        });
    int found = harmless.get();
    assertTrue(found > 100 && found < MUTATIONS - 100, "harmless: " + found);
  }
}
