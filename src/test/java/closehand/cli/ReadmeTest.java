package closehand.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the README shows is what the program says. */
class ReadmeTest {
  private static final Path README = Path.of("README.md");
  private static final String BEGIN = "<!-- screen: question -->\n";
  private static final String END = "<!-- end -->";

  @TempDir private Path folder = Path.of(".");

  @Test
  void theScreenInTheReadmeIsTheProgramsOwn() throws IOException {
    World world = World.run("1\n1\ny\ny\n1\n?\n", "interview", "--home", folder.toString());
    String all = world.output();
    int start = all.indexOf("CON-03.");
    int end = all.indexOf("> ", all.indexOf("How to see it:", start));
    assertTrue(start > 0 && end > start, all);
    String screen = BEGIN + "```\n" + all.substring(start, end).strip() + "\n> \n```\n" + END;
    screen = screen.replace("> \nWhy", "> ?\nWhy").replace("> \n```", ">\n```");
    String readme = Files.readString(README, StandardCharsets.UTF_8);
    int from = readme.indexOf(BEGIN);
    int to = readme.indexOf(END, from) + END.length();
    if (Boolean.getBoolean("golden.update")) {
      readme = readme.substring(0, from) + screen + readme.substring(to);
      Files.writeString(README, readme, StandardCharsets.UTF_8);
      to = readme.indexOf(END, from) + END.length();
    }
    assertEquals(screen, readme.substring(from, to));
  }

  @Test
  void theExamplesItNamesAreThere() throws IOException {
    String readme = Files.readString(README, StandardCharsets.UTF_8);
    assertTrue(readme.contains("examples/quiet-heron/answers.json"));
    assertTrue(Files.exists(Path.of("examples/quiet-heron/answers.json")));
    assertTrue(readme.contains("mvn -B verify\n"));
  }
}
