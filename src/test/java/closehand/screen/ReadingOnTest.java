package closehand.screen;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import closehand.interview.Interview;
import closehand.report.Glyphs;
import closehand.screen.frame.Key;
import closehand.screen.frame.ScreenSize;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * On a small screen and with digits alone: nothing is taken that is not in sight, a stop is read
 * before its lines are taken, the key that stops is always named, and figures can begin words.
 */
class ReadingOnTest {
  private static final ScreenSize NARROW = new ScreenSize(40, 12);

  private static ScreenModel typing(ScreenModel model, String keys) {
    ScreenModel next = model;
    for (char key : keys.toCharArray()) {
      next = Scenes.step(next, Scenes.key(key));
    }
    return next;
  }

  private static String text(ScreenModel model) {
    return String.join("\n", model.frame().text());
  }

  @Test
  void aStopIsNotTakenAsReadWhileItsLinesAreOutOfSight() {
    ScreenModel stopped = Scenes.from("stopped", NARROW, Glyphs.UNICODE);
    ScreenModel pressed = typing(stopped, "1");
    assertTrue(text(pressed).contains("Please read on first."), text(pressed));
    assertTrue(pressed.top().screen() instanceof NoticeScreen, "it still stands");
    ScreenModel read = typing(stopped, "888888888888");
    assertTrue(text(read).contains("I have read this"), text(read));
    assertFalse(typing(read, "1").top().screen() instanceof NoticeScreen, "now it is taken");
  }

  @Test
  void aDigitShowsALineThatIsOutOfSightBeforeItTakesIt() {
    ScreenModel question = Scenes.from("begun", NARROW, Glyphs.UNICODE);
    Interview before = question.talk().orElseThrow().interview();
    assertFalse(text(question).contains("3  No"), text(question));
    ScreenModel shown = typing(question, "3");
    assertEquals(before, shown.talk().orElseThrow().interview(), "nothing is taken unseen");
    assertTrue(text(shown).contains("> 3  No"), text(shown));
    assertTrue(text(shown).contains("The same key again"), text(shown));
    for (String again : List.of("3", "E")) {
      ScreenModel taken = typing(shown, again);
      assertTrue(text(taken).contains("STOP"), text(taken));
    }
  }

  @Test
  void aFreshScreenKeepsItsMarkInSightWhenSomethingIsSaid() {
    ScreenModel marked = Scenes.from("0 CON-03", NARROW, Glyphs.UNICODE);
    ScreenModel further = typing(marked, "SSSS");
    String before = text(further).replaceAll("(?s).*(> [^\n]*).*", "$1");
    ScreenModel told = typing(further, ";");
    assertTrue(text(told).contains("has no meaning"), text(told));
    assertEquals(before, text(told).replaceAll("(?s).*(> [^\n]*).*", "$1"));
  }

  @ParameterizedTest
  @MethodSource("scenes")
  void theKeyThatStopsIsNamedWhereverThereIsARow(Scenes.Scene scene) {
    ScreenModel usual = scene.at(ScreenSize.USUAL, Glyphs.UNICODE);
    for (int columns = 8; columns <= 132; columns += 7) {
      for (int rows = 2; rows <= 43; rows += rows < 14 ? 1 : 10) {
        ScreenModel model = usual.after(new Key.Resized(new ScreenSize(columns, rows))).model();
        String key = StopKey.of(model).orElse("");
        String all = text(model);
        assertTrue(
            key.isEmpty() || all.contains(key + " stop".substring(0, Math.min(5, columns - 1))),
            () -> model.size() + "\n" + all);
      }
    }
  }

  @Test
  void whileWordsAreTypedEscapeStopsAndWhatWasTypedStays() {
    ScreenModel typed = typing(Scenes.from("0 GOA-01", ScreenSize.USUAL, Glyphs.UNICODE), "Chess");
    assertTrue(text(typed).contains("Esc stop"), text(typed));
    ScreenModel stopped = Scenes.step(typed, Key.Named.ESCAPE);
    assertTrue(text(stopped).contains("Let us stop here"), text(stopped));
    assertTrue(text(typing(stopped, "0")).contains("Words: Chess"), text(stopped));
    ScreenModel figures = Scenes.from("0 END-02", ScreenSize.USUAL, Glyphs.UNICODE);
    assertTrue(text(figures).contains("z stop"), text(figures));
    assertTrue(text(typing(figures, "z")).contains("Let us stop here"), text(figures));
  }

  static Stream<Scenes.Scene> scenes() {
    return Scenes.all().stream();
  }

  @Test
  void noLineOfAStopIsPassedOverWhicheverWayItIsRead() {
    for (ScreenSize size : List.of(NARROW, new ScreenSize(20, 6))) {
      ScreenModel wide = Scenes.from("stopped", new ScreenSize(80, 43), Glyphs.UNICODE);
      List<String> words =
          List.of(text(wide).split("> 1")[0].replaceFirst("[^\n]*\n", "").strip().split("\\s+"));
      for (String key : List.of("1", "8", "S", "E")) {
        ScreenModel stopped = Scenes.from("stopped", size, Glyphs.UNICODE);
        StringBuilder read = new StringBuilder(text(stopped));
        for (int i = 0; i < 80 && !text(stopped).contains("I have read this"); i++) {
          stopped = typing(stopped, key);
          read.append('\n').append(text(stopped));
        }
        List<String> seen = List.of(read.toString().split("\\s+"));
        for (String word : words) {
          assertTrue(seen.contains(word) || word.length() > 18, size + " " + key + ": " + word);
        }
      }
    }
  }

  @Test
  void aFigureBeginsWordsWhereNoLineHasIt() {
    ScreenModel words = Scenes.from("0 session.stopSignal", NARROW, Glyphs.UNICODE);
    ScreenModel typed = typing(words, "2 blinks");
    assertTrue(text(typed).contains("2 blinks"), text(typed));
    assertFalse(text(typed).contains("There is no line"), text(typed));
  }
}
