package closehand.screen.task;

import static org.junit.jupiter.api.Assertions.assertEquals;

import closehand.bank.TaskBook;
import closehand.interview.Provenance;
import closehand.json.BankReader;
import closehand.json.EmbeddedBank;
import closehand.measure.task.TaskSetup;
import closehand.report.Glyphs;
import closehand.screen.frame.Guards;
import closehand.screen.frame.Key;
import closehand.screen.frame.ScreenSize;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every step of a task at four sizes, as it was looked at and found good. */
class GoldenTaskScreensTest {
  private static final Path FOLDER = Path.of("src/test/resources/screen-task");
  private static final TaskBook BOOK = book();

  private static TaskBook book() {
    try {
      return BankReader.read(new EmbeddedBank(), BankReader.Extent.FOR_USE)
          .bank()
          .orElseThrow()
          .tasks()
          .orElseThrow();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /**
   * A screen that somebody looked at.
   *
   * @param keys what is pressed to get there; T lets the time of a go pass
   */
  record Scene(String name, String task, String refusal, String keys) {
    @Override
    public String toString() {
      return name;
    }
  }

  static Stream<Scene> scenes() {
    return Stream.of(
        new Scene("refused", "T1.L.I", "We have no stop signal yet. Please choose one first.", ""),
        new Scene("told", "T1.L.I", "", ""),
        new Scene("assurance", "T1.L.I", "", "1"),
        new Scene("something-first", "T1.L.I", "", "12"),
        new Scene("posture", "T1.L.I", "", "1111"),
        new Scene("who-counts", "T1.L.I", "", "111111"),
        new Scene("ready", "T1.L.I", "", "1111111"),
        new Scene("going-by-eye", "T1.L.I", "", "11111111"),
        new Scene("going-by-keys", "T1.L.I", "", "11111121"),
        new Scene("why-stopped", "T1.L.I", "", "11111111x"),
        new Scene("not-counted", "T1.L.I", "", "11111121R"),
        new Scene("pain-now", "T1.L.I", "", "11111111T"),
        new Scene("counting", "T1.L.I", "", "11111111T0211T"),
        new Scene("number-once-more", "T1.L.I", "", "11111111T0211T24"),
        new Scene("cells", "T3.L.T", "", "1111111E0211E15"),
        new Scene("result", "T1.L.I", "", "11111111T0211T24102111T2610212"),
        new Scene("stopped", "T1.L.I", "", "11111111x5"),
        new Scene("reasons-to-stop", "T1.L.I", "", "18"));
  }

  @ParameterizedTest
  @MethodSource("scenes")
  void theScreenIsAsItWasFoundGood(Scene scene) throws IOException {
    StringBuilder all = new StringBuilder();
    all.append("Task: ").append(scene.task()).append("\nKeys: ").append(scene.keys()).append("\n");
    for (ScreenSize size :
        List.of(
            new ScreenSize(132, 43),
            new ScreenSize(80, 24),
            new ScreenSize(40, 12),
            new ScreenSize(20, 6))) {
      all.append("\n== ").append(size).append("\n");
      at(scene, size).frame(size).text().forEach(row -> all.append('|').append(row).append('\n'));
    }
    Path file = FOLDER.resolve(scene.name() + ".txt");
    if (Boolean.getBoolean("golden.update")) {
      Files.createDirectories(FOLDER);
      Files.writeString(file, all);
    }
    assertEquals(Files.readString(file), all.toString());
  }

  private static TaskFace at(Scene scene, ScreenSize size) {
    TaskSetup setup =
        new TaskSetup(
            BOOK.task(scene.task()).orElseThrow(),
            BOOK,
            false,
            Provenance.By.VOLUNTEER,
            scene.refusal().isEmpty() ? List.of() : List.of(scene.refusal()),
            Optional.of(2.0),
            0,
            0,
            "morning",
            17,
            true);
    long millis = 50_000;
    TaskFace face = new TaskFace(setup, Glyphs.UNICODE, size, Guards.USUAL, millis);
    for (char key : scene.keys().toCharArray()) {
      millis += 1000;
      switch (key) {
        case 'T' -> {
          millis += face.waitMillis(millis);
          face.press(new Key.Passed(), millis);
        }
        case 'R' -> face.press(new Key.Pasted("x"), millis);
        case 'E' -> face.press(Key.Named.ENTER, millis);
        default -> face.press(new Key.Typed(String.valueOf(key)), millis);
      }
    }
    return face;
  }
}
