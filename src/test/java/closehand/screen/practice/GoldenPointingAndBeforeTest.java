package closehand.screen.practice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import closehand.measure.CoreStops;
import closehand.measure.before.SomeBefore;
import closehand.report.Glyphs;
import closehand.screen.frame.Frame;
import closehand.screen.frame.Guards;
import closehand.screen.frame.Key;
import closehand.screen.frame.Pressed;
import closehand.screen.frame.ScreenSize;
import closehand.screen.frame.Showing;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Pointing, and the questions before anything begins, at four sizes as they were looked at and
 * found good.
 */
class GoldenPointingAndBeforeTest {
  private static final Path FOLDER = Path.of("src/test/resources/screen-practice");
  private static final List<ScreenSize> SIZES =
      List.of(
          new ScreenSize(132, 43),
          new ScreenSize(80, 24),
          new ScreenSize(40, 12),
          new ScreenSize(20, 6));

  private static Showing face(String name) {
    return name.startsWith("pointing")
        ? new PointingFace(
            List.of("mouse", "trackball"),
            task -> List.of("What was measured stands here."),
            CoreStops.all(),
            720,
            Glyphs.UNICODE,
            Guards.USUAL)
        : new BeforeFace(
            SomeBefore.BEFORE,
            before -> before.ended().isPresent() ? List.of() : SomeBefore.refusals(before),
            Glyphs.UNICODE,
            Guards.USUAL);
  }

  /** Keys as typed; {@code B} is Backspace, {@code E} Enter, {@code R} arrow right. */
  private static Showing at(String name, String keys, ScreenSize size) {
    Showing face = face(name);
    Frame first = face.frame(size);
    assertEquals(size.rows(), first.text().size());
    long now = 0;
    for (char key : keys.toCharArray()) {
      now += 2_000;
      Key pressed =
          switch (key) {
            case 'B' -> Key.Named.BACKSPACE;
            case 'E' -> Key.Named.ENTER;
            case 'R' -> Key.Named.RIGHT;
            default -> Key.of(key);
          };
      if (name.startsWith("before")) {
        Pressed.on(face, pressed, now, size);
      } else {
        face.press(pressed, now);
      }
    }
    return face;
  }

  @Test
  void anAnswerThatIsOutOfSightIsShownBeforeItIsTaken() {
    ScreenSize small = new ScreenSize(20, 6);
    Showing face = face("before");
    String asked = page(face);
    face.frame(small);
    assertFalse(String.join(" ", face.frame(small).text()).contains("2 "), "out of sight");
    face.press(Key.of('2'), 2_000);
    assertEquals(asked, page(face), "brought into sight, not taken");
    face.frame(small);
    face.press(Key.of('2'), 4_000);
    assertFalse(asked.equals(page(face)), "taken once it is seen");
  }

  @Test
  void leavingWorksOutOfSight() {
    Showing face = face("before");
    String asked = page(face);
    face.frame(new ScreenSize(20, 6));
    face.press(Key.of('0'), 2_000);
    assertFalse(asked.equals(page(face)));
  }

  private static String page(Showing face) {
    return String.join("\n", face.frame(new ScreenSize(132, 43)).text()).replace('>', ' ');
  }

  @ParameterizedTest
  @CsvSource({
    "pointing-pain,''",
    "pointing-ready,2",
    "pointing-targets,21",
    "pointing-marker,21RRREE",
    "pointing-stop,21B",
    "pointing-stopped,21B2",
    "before-signal,''",
    "before-signal-not-yet,2",
    "before-chest,111",
    "before-pain,1111",
    "before-pain-too-high,11117",
    "before-not-sure,1115",
    "before-left,0"
  })
  void theScreenIsAsItWasFoundGood(String name, String keys) throws IOException {
    StringBuilder all = new StringBuilder("Keys: " + keys + "\n");
    for (ScreenSize size : SIZES) {
      all.append("\n== ").append(size).append("\n");
      at(name, keys, size).frame(size).text().forEach(r -> all.append('|').append(r).append('\n'));
    }
    Path file = FOLDER.resolve(name + ".txt");
    if (Boolean.getBoolean("golden.update")) {
      Files.createDirectories(FOLDER);
      Files.writeString(file, all);
    }
    assertEquals(Files.readString(file), all.toString());
  }

  @Test
  void onlyWhereAllWasAnsweredWellSomethingBegins() {
    ScreenSize size = new ScreenSize(80, 24);
    BeforeFace well = (BeforeFace) at("before", "11113", size);
    assertTrue(well.over() && well.isClear());
    for (String keys : List.of("", "1", "1111", "11117", "1115", "1112", "0", "B", "111B")) {
      BeforeFace face = (BeforeFace) at("before", keys, size);
      assertFalse(face.isClear(), keys);
      assertFalse(face.over(), "it is said first: " + keys);
      face.press(new Key.Closed());
      assertTrue(face.over() && !face.isClear(), keys);
    }
  }

  @Test
  void whatTheCaseForbidsIsSaidBeforeItIsLeft() {
    ScreenSize size = new ScreenSize(80, 24);
    BeforeFace face = (BeforeFace) at("before", "11116", size);
    assertTrue(String.join(" ", face.frame(size).text()).contains("Not today."));
    face.press(Key.of('0'));
    assertTrue(face.over() && !face.isClear());
  }
}
