package closehand.screen;

import static org.junit.jupiter.api.Assertions.assertEquals;

import closehand.interview.Answers;
import closehand.screen.frame.ScreenSize;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Holds the file that {@code src/test/e2e/run} types at a real terminal: the digits of a whole
 * interview.
 */
class TypedInterviewTest {
  private static final Path FOLDER = Path.of("src", "test", "e2e");
  private static final int DIGITS_A_LINE = 60;

  /** From this many digits on a storm of sizes may come. */
  private static final int STORM = 300;

  @ParameterizedTest
  @CsvSource({"0,80,24", "0,40,12"})
  void theDigitsToTypeAreThoseTheScreensAskFor(int number, int columns, int rows)
      throws IOException {
    Answers wanted = CoreDesk.goldCase(number);
    Player player = new Player(Player.Means.DIGITS, new ScreenSize(columns, rows));
    player.take(o -> o.words().equals("Start a new interview"));
    player.take(o -> o.words().startsWith("A clinician"));
    player.take(o -> o.words().startsWith("The whole interview"));
    player.take(o -> o.words().startsWith("Not sealed"));
    int begun = player.typed().length();
    player.answer(wanted);

    String name = "case-" + number + "-" + columns + "x" + rows + ".digits";
    hold(name, paragraphs(player.typed(), begun, calmAfter(player, STORM)));
    hold("case-" + number + ".approaches", approaches(wanted));
  }

  /** Where a question is at its start, so that Home leads there again after a storm of sizes. */
  private static int calmAfter(Player player, int typed) {
    return player.calm().stream().filter(c -> c >= typed).findFirst().orElseThrow();
  }

  /** Every approach in the order of the advice, as it must come out of what was typed. */
  private static List<String> approaches(Answers answers) {
    return CoreDesk.RULES.advise(answers).suggestions().stream()
        .map(s -> s.approach().id())
        .toList();
  }

  /**
   * Three parts with an empty line between: up to the first question, up to the storm, the rest.
   */
  private static List<String> paragraphs(String digits, int begun, int storm) {
    List<String> lines = new ArrayList<>(lines(digits.substring(0, begun)));
    lines.add("");
    lines.addAll(lines(digits.substring(begun, storm)));
    lines.add("");
    lines.addAll(lines(digits.substring(storm)));
    return lines;
  }

  private static List<String> lines(String digits) {
    List<String> lines = new ArrayList<>();
    for (int from = 0; from < digits.length(); from += DIGITS_A_LINE) {
      lines.add(digits.substring(from, Math.min(digits.length(), from + DIGITS_A_LINE)));
    }
    return lines;
  }

  private static void hold(String name, List<String> lines) throws IOException {
    Path file = FOLDER.resolve(name);
    if (Boolean.getBoolean("golden.update")) {
      Files.write(file, lines, StandardCharsets.UTF_8);
    }
    assertEquals(
        String.join("\n", Files.readAllLines(file, StandardCharsets.UTF_8)),
        String.join("\n", lines),
        () -> file + " is out of date; -Dgolden.update=true writes it anew");
  }
}
