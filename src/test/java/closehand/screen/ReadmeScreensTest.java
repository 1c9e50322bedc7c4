package closehand.screen;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** The screens shown in the README are those of the golden files. */
class ReadmeScreensTest {
  private static final Path README = Path.of("README.md");
  private static final Pattern SCREEN =
      Pattern.compile(
          "<!-- full screen: ([a-z-]+) ([0-9x]+) -->\n```\n(.*?)\n```\n<!-- end -->",
          Pattern.DOTALL);

  @Test
  void theScreensInTheReadmeAreTheGoldenOnes() throws IOException {
    String readme = Files.readString(README);
    StringBuilder updated = new StringBuilder();
    Matcher screens = SCREEN.matcher(readme);
    int count = 0;
    while (screens.find()) {
      String wanted = golden(screens.group(1), screens.group(2));
      if (Boolean.getBoolean("golden.update")) {
        String block =
            "<!-- full screen: "
                + screens.group(1)
                + " "
                + screens.group(2)
                + " -->\n```\n"
                + wanted
                + "\n```\n<!-- end -->";
        screens.appendReplacement(updated, Matcher.quoteReplacement(block));
      } else {
        assertEquals(wanted, screens.group(3));
      }
      count++;
    }
    if (Boolean.getBoolean("golden.update")) {
      screens.appendTail(updated);
      Files.writeString(README, updated);
    }
    assertTrue(count >= 3, "three screens are shown");
  }

  /** The rows of a golden screen, with several empty rows as one. */
  private static String golden(String name, String size) throws IOException {
    List<String> lines =
        Files.readAllLines(Path.of("src/test/resources/screen").resolve(name + ".txt"));
    int from = lines.indexOf("== " + size) + 1;
    assertTrue(from > 0, name + " at " + size);
    StringBuilder rows = new StringBuilder();
    String before = "";
    for (String line : lines.subList(from, lines.size())) {
      if (!line.startsWith("|")) {
        break;
      }
      String row = line.substring(1);
      if (!row.isEmpty() || !before.isEmpty()) {
        rows.append(row).append('\n');
      }
      before = row;
    }
    return rows.toString().stripTrailing();
  }
}
