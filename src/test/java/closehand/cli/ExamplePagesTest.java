package closehand.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The pages beside the four invented players are the pages the program makes of their answers. */
class ExamplePagesTest {
  private static final Path EXAMPLES = Path.of("examples");
  private static final String DATE = "2026-11-25";

  static Stream<String> players() throws IOException {
    try (Stream<Path> folders = Files.list(EXAMPLES)) {
      return folders
          .filter(Files::isDirectory)
          .map(f -> f.getFileName().toString())
          .sorted()
          .toList()
          .stream();
    }
  }

  @Test
  void thereAreFour() throws IOException {
    assertEquals(
        List.of("amber-otter", "paper-boat", "quiet-heron", "silver-birch"), players().toList());
  }

  @ParameterizedTest
  @MethodSource("players")
  void thePagesAreThoseOfTheAnswers(String player) throws IOException {
    for (String reader : List.of("player", "clinician", "setup")) {
      World world =
          World.run("", "summary", "--answers", answers(player), "--for", reader, "--date", DATE);
      assertEquals(0, world.code(), world.error());
      compare(EXAMPLES.resolve(player).resolve("page-for-" + reader + ".txt"), world.output());
    }
  }

  @ParameterizedTest
  @MethodSource("players")
  void pagesArePlainTextOfSeventyTwoColumns(String player) {
    for (String reader : List.of("player", "clinician", "setup")) {
      String page =
          World.run(
                  "",
                  "summary",
                  "--ascii",
                  "--answers",
                  answers(player),
                  "--for",
                  reader,
                  "--date",
                  DATE)
              .output();
      for (String line : page.split("\n", -1)) {
        assertTrue(line.length() <= 72, line);
        assertEquals(line.stripTrailing(), line);
        assertTrue(line.chars().allMatch(c -> c >= ' ' && c <= '~'), line);
      }
    }
  }

  @Test
  void aControllerGameAndAPointerGameLeadToDifferentSuggestionsForTheSamePlayer() {
    String json = World.run("", "advise", "--json", "--answers", answers("amber-otter")).output();
    int first = json.indexOf("\"game\" : 0");
    int second = json.indexOf("\"game\" : 1");
    assertTrue(first > 0 && second > first, "each game is judged alone");
    assertNotEquals(suggestions(json.substring(first)), suggestions(json.substring(second)));
  }

  private static String suggestions(String json) {
    return json.substring(json.indexOf("\"suggestions\""), json.indexOf("\"excluded\""));
  }

  private static String answers(String player) {
    return EXAMPLES.resolve(player).resolve("answers.json").toString();
  }

  private static void compare(Path golden, String page) throws IOException {
    if (Boolean.getBoolean("golden.update")) {
      Files.writeString(golden, page, StandardCharsets.UTF_8);
    }
    assertEquals(Files.readString(golden, StandardCharsets.UTF_8), page, golden.toString());
  }
}
