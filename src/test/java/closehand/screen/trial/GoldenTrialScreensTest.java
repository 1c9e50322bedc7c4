package closehand.screen.trial;

import static org.junit.jupiter.api.Assertions.assertEquals;

import closehand.measure.CoreStops;
import closehand.measure.trial.Felt;
import closehand.measure.trial.SetUp;
import closehand.measure.trial.Trial;
import closehand.measure.trial.TrialDialogue;
import closehand.measure.trial.Tries;
import closehand.report.Glyphs;
import closehand.screen.frame.Guards;
import closehand.screen.frame.Key;
import closehand.screen.frame.ScreenSize;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The pages of a trial at four sizes, as they were looked at and found good. */
class GoldenTrialScreensTest {
  private static final Path FOLDER = Path.of("src/test/resources/screen-trial");
  private static final List<ScreenSize> SIZES =
      List.of(
          new ScreenSize(132, 43),
          new ScreenSize(80, 24),
          new ScreenSize(40, 12),
          new ScreenSize(20, 6));

  /** To the question on pain before, all typed with letters and Enter. */
  private static final String TO_PAIN = "12padEEEEEmoonElapEaEbEcEE";

  /** From pain before to the end: figures that fill their line, then nothing to note. */
  private static final String AFTER_PAIN =
      "011021021011" + "1" + "0121" + "081" + "071" + "091" + "011" + "031" + "031" + "081" + "0";

  private static TrialShowing at(String keys, List<Trial> earlier) {
    TrialShowing showing =
        new TrialShowing(
            TrialDialogue.on(Trial.begun("2026-11-25"), earlier, CoreStops.all()),
            trial -> List.of(),
            Glyphs.UNICODE,
            Guards.USUAL);
    for (char key : keys.toCharArray()) {
      showing.press(key == 'E' ? Key.Named.ENTER : Key.of(key));
    }
    return showing;
  }

  private static Trial tried(String setUp, int worked) {
    OptionalInt count = OptionalInt.of(worked);
    OptionalInt two = OptionalInt.of(2);
    Felt felt = new Felt(two, two, two);
    return new Trial(
        "2026-11-20",
        SetUp.named(setUp),
        new Trial.Scene("moon race", "first lap"),
        new Trial.Place(Optional.of(Trial.Where.TOGETHER), Optional.empty()),
        List.of(new Tries("jump", count), new Tries("turn", count), new Tries("brake", count)),
        felt,
        two,
        felt,
        OptionalInt.of(12),
        OptionalInt.of(worked),
        "",
        Optional.empty(),
        /* done= */ true);
  }

  /** Four trials of two invented set-ups, where two were tried. */
  private static List<Trial> earlier(String name) {
    return name.startsWith("compared")
        ? List.of(tried("pad", 5), tried("mouse", 8), tried("mouse", 9), tried("pad", 6))
        : List.of();
  }

  @ParameterizedTest
  @CsvSource({
    "consent,''",
    "place,1",
    "set-up,12",
    "letters,127",
    "letters-of-a-group,1274",
    "number,12padE",
    "number-once-more,12padE012",
    "number-or-else,12padE999",
    "cost,12padEE",
    "loan,11padEEEE",
    "pain-before,TO_PAIN",
    "signs-asked,TO_PAIN011021021011",
    "stop-signs,19",
    "stop-signs-others,198",
    "stopped,195",
    "help,1?",
    "compared-offered,''",
    "compared,3",
    "whole,TO_PAINAFTER_PAIN"
  })
  void theScreenIsAsItWasFoundGood(String name, String keys) throws IOException {
    String typed = keys.replace("TO_PAIN", TO_PAIN).replace("AFTER_PAIN", AFTER_PAIN);
    StringBuilder all = new StringBuilder("Keys: " + typed + "\n");
    for (ScreenSize size : SIZES) {
      all.append("\n== ").append(size).append("\n");
      at(typed, earlier(name))
          .frame(size)
          .text()
          .forEach(r -> all.append('|').append(r).append('\n'));
    }
    Path file = FOLDER.resolve(name + ".txt");
    if (Boolean.getBoolean("golden.update")) {
      Files.createDirectories(FOLDER);
      Files.writeString(file, all);
    }
    assertEquals(Files.readString(file), all.toString());
  }
}
