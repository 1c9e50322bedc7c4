package closehand.screen;

import static org.junit.jupiter.api.Assertions.assertEquals;

import closehand.report.Glyphs;
import closehand.screen.frame.Frame;
import closehand.screen.frame.ScreenSize;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every screen at four sizes, as text and as roles, as it was looked at and found good. */
class GoldenScreensTest {
  private static final Path FOLDER = Path.of("src/test/resources/screen");
  static final List<ScreenSize> SIZES =
      List.of(
          new ScreenSize(132, 43),
          new ScreenSize(80, 24),
          new ScreenSize(40, 12),
          new ScreenSize(20, 6));

  static Stream<Scenes.Scene> scenes() {
    return Scenes.all().stream();
  }

  @ParameterizedTest
  @MethodSource("scenes")
  void theScreenIsAsItWasFoundGood(Scenes.Scene scene) throws IOException {
    StringBuilder all = new StringBuilder();
    all.append("From: ").append(scene.from()).append("\nKeys: ").append(scene.keys()).append("\n");
    for (ScreenSize size : SIZES) {
      all.append("\n== ").append(size).append("\n");
      append(all, scene.at(size, Glyphs.UNICODE).frame());
    }
    Path file = FOLDER.resolve(scene.name() + ".txt");
    if (Boolean.getBoolean("golden.update")) {
      Files.createDirectories(FOLDER);
      Files.writeString(file, all);
    }
    assertEquals(Files.readString(file), all.toString());
  }

  private static void append(StringBuilder all, Frame frame) {
    frame.text().forEach(row -> all.append('|').append(row).append('\n'));
    all.append("-- roles, cursor at row ")
        .append(frame.cursor().row())
        .append(", column ")
        .append(frame.cursor().column())
        .append('\n');
    frame.roles().forEach(row -> all.append('|').append(row).append('\n'));
  }
}
