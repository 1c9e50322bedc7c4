package closehand.screen.practice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import closehand.report.Glyphs;
import closehand.screen.frame.Frame;
import closehand.screen.frame.Guards;
import closehand.screen.frame.Key;
import closehand.screen.frame.ScreenSize;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The pages of practice as they were looked at and found good, and at every size. */
class PracticePagesTest {
  private static final Path FOLDER = Path.of("src/test/resources/screen-practice");
  private static final List<ScreenSize> SIZES =
      List.of(new ScreenSize(80, 24), new ScreenSize(40, 12));

  private long now;

  /** Keys as typed; {@code B} is Backspace, {@code w} waits until something is due. */
  private PracticeFace at(String keys) {
    PracticeFace face = new PracticeFace(new SomeDesk(), Glyphs.UNICODE, Guards.USUAL);
    for (char key : keys.toCharArray()) {
      if (key == 'w') {
        now += Math.max(0, face.waitMillis(now));
        face.press(new Key.Passed(), now);
      } else {
        now += 2_000;
        face.press(key == 'B' ? Key.Named.BACKSPACE : Key.of(key), now);
      }
    }
    return face;
  }

  @ParameterizedTest
  @CsvSource({
    "first,''",
    "check,1ab",
    "check-paused,1abB",
    "check-found,1baB4",
    "pain,2",
    "ready,22",
    "between,221",
    "prompt,221w",
    "pause,221#",
    "stop,221wB",
    "stop-body,221wB3",
    "stopped-chest,221wB33",
    "stopped-pain,28"
  })
  void thePageIsAsItWasFoundGood(String name, String keys) throws IOException {
    StringBuilder all = new StringBuilder("Keys: " + keys + "\n");
    for (ScreenSize size : SIZES) {
      all.append("\n== ").append(size).append("\n");
      Frame frame = at(keys).frame(size);
      frame.text().forEach(row -> all.append('|').append(row).append('\n'));
      all.append("-- roles\n");
      frame.roles().forEach(row -> all.append('|').append(row).append('\n'));
    }
    Path file = FOLDER.resolve(name + ".txt");
    if (Boolean.getBoolean("golden.update")) {
      Files.createDirectories(FOLDER);
      Files.writeString(file, all);
    }
    assertEquals(Files.readString(file), all.toString());
  }

  @Test
  void everyPageFitsEverySizeAndSaysHowToStop() {
    for (String keys : List.of("", "1", "2", "22", "221", "221w", "221wB", "28")) {
      PracticeFace face = at(keys);
      for (int columns = 10; columns <= 140; columns += 7) {
        for (int rows = 2; rows <= 45; rows += 3) {
          Frame frame = face.frame(new ScreenSize(columns, rows));
          assertEquals(rows, frame.rows().size());
        }
      }
      String small = String.join(" ", face.frame(new ScreenSize(40, 12)).text());
      assertTrue(small.contains("stop: pain"), small);
    }
  }
}
