package closehand.screen;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import closehand.report.Glyphs;
import closehand.screen.frame.Cell;
import closehand.screen.frame.Frame;
import closehand.screen.frame.Key;
import closehand.screen.frame.ScreenSize;
import closehand.screen.view.Layout;
import closehand.screen.view.Spot;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** A11: every screen at every size from 1 by 1 to 140 by 45. */
class AllSizesTest {
  private static final int WIDEST = 140;
  private static final int TALLEST = 45;

  /** Below this a screen is only asked not to fail. */
  private static final int LEAST_ROWS = 6;

  private static final int LEAST_COLUMNS = 20;

  static Stream<Scenes.Scene> scenes() {
    return Scenes.all().stream();
  }

  @ParameterizedTest
  @MethodSource("scenes")
  void everyFrameFillsItsScreenAndHasItsCursorOnTheMark(Scenes.Scene scene) {
    ScreenModel model = scene.at(ScreenSize.USUAL, Glyphs.UNICODE);
    for (int columns = 1; columns <= WIDEST; columns++) {
      // Every width at some heights and every height at some widths, so that the run stays short.
      boolean everyRow = columns % 20 == 0 || columns == 1;
      for (int rows = 1; rows <= TALLEST; rows += everyRow ? 1 : 7) {
        ScreenSize size = new ScreenSize(columns, rows);
        ScreenModel resized = model.after(new Key.Resized(size)).model();
        check(resized.frame(), size, resized);
      }
    }
  }

  private static void check(Frame frame, ScreenSize size, ScreenModel model) {
    assertEquals(size, frame.size());
    for (List<Cell> row : frame.rows()) {
      assertEquals(size.columns(), row.size());
    }
    if (size.rows() >= LEAST_ROWS && size.columns() >= LEAST_COLUMNS) {
      List<String> text = frame.text();
      String row = text.get(frame.cursor().row());
      boolean typing = model.top().screen().draft().isPresent();
      assertTrue(row.contains("> ") || typing, () -> size + "\n" + String.join("\n", text));
      long marks = text.stream().filter(t -> t.startsWith("> ") || t.startsWith(" > ")).count();
      assertTrue(marks <= 1, () -> size + "\n" + String.join("\n", text));
    }
  }

  @ParameterizedTest
  @MethodSource("scenes")
  void everyChoiceIsReachedWithOneKeyAndSeenBeforeItCanBeTaken(Scenes.Scene scene) {
    ScreenModel usual = scene.at(ScreenSize.USUAL, Glyphs.UNICODE);
    for (int columns : new int[] {20, 40, 80, 132}) {
      for (int rows : new int[] {6, 9, 12, 24}) {
        reach(usual.after(new Key.Resized(new ScreenSize(columns, rows))).model());
      }
    }
  }

  private static void reach(ScreenModel start) {
    int offers = start.shown().offers().size();
    ScreenModel model = start.at(Spot.START);
    Set<Integer> reached = new HashSet<>();
    int most = 10 * (offers + 400);
    for (int i = 0; i < most && reached.size() < offers; i++) {
      Layout layout = Pressing.layout(model);
      Spot spot = layout.settle(model.top().spot());
      if (!layout.isUnread(spot)) {
        reached.add(spot.chosen());
        int row = model.frame().cursor().row();
        assertTrue(model.frame().rows().get(row).size() > 0);
      }
      model = model.after(Key.Named.DOWN).model();
    }
    assertEquals(
        IntStream.range(0, offers).boxed().collect(java.util.stream.Collectors.toSet()), reached);
  }

  @ParameterizedTest
  @MethodSource("scenes")
  void textIsAtMost76ColumnsWide(Scenes.Scene scene) {
    ScreenModel model = scene.at(new ScreenSize(110, 30), Glyphs.UNICODE);
    List<String> text = model.frame().text();
    for (String row : text.subList(1, text.size() - 1)) {
      assertTrue(row.length() <= 1 + 76, row);
    }
  }

  @ParameterizedTest
  @MethodSource("scenes")
  void anAsciiTerminalGetsAsciiAlone(Scenes.Scene scene) {
    for (ScreenSize size : GoldenScreensTest.SIZES) {
      ScreenModel model = scene.at(size, Glyphs.ASCII);
      for (String row : model.frame().text()) {
        assertTrue(row.chars().allMatch(c -> c >= 0x20 && c <= 0x7E), row);
      }
    }
  }

  @ParameterizedTest
  @MethodSource("scenes")
  void aStormOfResizesKeepsPlaceAndAnswers(Scenes.Scene scene) {
    ScreenModel model = scene.at(ScreenSize.USUAL, Glyphs.UNICODE);
    int chosen = Moved.chosen(model);
    ScreenModel stormed = model;
    for (int i = 0; i < 60; i++) {
      ScreenSize size = new ScreenSize(20 + (i * 37) % 113, 6 + (i * 11) % 38);
      ScreenModel.Step step = stormed.after(new Key.Resized(size));
      assertEquals(List.of(), step.effects());
      stormed = step.model();
    }
    stormed = stormed.after(new Key.Resized(ScreenSize.USUAL)).model();
    assertEquals(chosen, Moved.chosen(stormed));
    assertEquals(model.talk(), stormed.talk());
    assertTrue(Moved.unread(model) || !Moved.unread(stormed), "what was in sight is in sight");
  }
}
